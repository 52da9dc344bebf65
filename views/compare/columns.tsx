import type { Claim, Side } from '../../src/compare/sides.ts'
import type { Finding } from '../../src/contract/advice.ts'
import { ruleLink } from '../advice/links.ts'
import { metCounts } from '../advice/sheet/machines.tsx'
import { sizeWords } from '../words/size.ts'
import { ANSWER_WORDS, VERDICT_WORDS } from '../words/verdict.ts'
import { type ComparePageProps, packOf } from './props.ts'

/** One column for each machine with its claims inside: verdict first, then only what differs. */
export function Columns(props: ComparePageProps) {
  const { comparison, piecesShort, rejectWords } = props
  const { sides, differences } = comparison
  const { verdicts, burdens, figures, ownFigures, sizes, rules } = differences
  const counts = countsOf(props)
  const rejectsDiffer = !allAlike(rejectWords)
  return (
    <section aria-labelledby="differs">
      <h2 id="differs">Side by side</h2>
      <section class="scroll" tabindex={0} aria-labelledby="differs-table">
        <table class="side-by-side">
          <caption id="differs-table">Only what differs; sizes in mm: expected / safe to promise</caption>
          <thead>
            <tr>
              <td />
              {sides.map((side) => (
                <th scope="col">{side.words}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {allAlike(verdicts) ? null : (
              <Row
                words="Verdict"
                cells={verdicts.map((verdict) => (
                  <>
                    <span aria-hidden="true">{VERDICT_WORDS[verdict].mark}</span>{' '}
                    {VERDICT_WORDS[verdict].words}
                  </>
                ))}
              />
            )}
            {allAlike(counts) ? null : <Row words="Sizes asked" cells={counts} />}
            {sizes.map(({ contaminant, findings }) => (
              <Row
                words={piecesShort[contaminant] ?? ''}
                asked={askedWords(findings)}
                cells={findings.map((finding) => <FindingWords finding={finding} />)}
              />
            ))}
            {sides.some(({ claims }) => claims.length > 0) ? (
              <Row words="Quoted to you" cells={sides.map((side) => <Claims side={side} {...props} />)} />
            ) : null}
            {burdens ? <Row words="Cost and effort, 1 to 5" cells={burdens.map(String)} /> : null}
            {rejectsDiffer ? <Row words="False rejects" cells={rejectWords} /> : null}
            {figures.map((row) => (
              <Row words={row.words} cells={row.cells.map((cell) => cell ?? '–')} />
            ))}
            {ownFigures.some((own) => own.length > 0) ? (
              <Row
                words="Figures of this one only"
                cells={ownFigures.map((own) =>
                  own.map(({ words, value }) => `${words.toLowerCase()} ${value}`).join(', '),
                )}
              />
            ) : null}
            {rules.length > 0 ? (
              <Row
                words="What weighs in this one only"
                cells={sides.map((side, at) => (
                  <ul class="only-here">
                    {rules.map(({ rule, title, texts }) =>
                      texts[at] === null ? null : (
                        <li>
                          <a href={ruleLink(rule, packOf(side, props))}>{title}</a>
                        </li>
                      ),
                    )}
                  </ul>
                ))}
              />
            ) : null}
          </tbody>
        </table>
      </section>
      <p class="small">The same for all: {sameWords(props, rejectsDiffer)}</p>
    </section>
  )
}

const allAlike = (cells: readonly string[]) => new Set(cells).size <= 1

const countsOf = ({ comparison }: ComparePageProps) =>
  comparison.sides.map(({ option }) => metCounts(option) || 'none')

function sameWords(props: ComparePageProps, rejectsDiffer: boolean): string {
  const { comparison, piecesShort, rejectWords } = props
  const { verdicts, same } = comparison.differences
  const { figures, contaminants } = same
  const counts = countsOf(props)
  const parts = [
    ...(allAlike(verdicts) && verdicts[0] ? [`verdict ${VERDICT_WORDS[verdicts[0]].words}`] : []),
    ...(allAlike(counts) && counts[0] ? [`sizes asked: ${counts[0]}`] : []),
    ...contaminants.map((at) => {
      const finding = comparison.sides[0]?.findings[at]
      return finding ? `${piecesShort[at]} (${findingWords(finding)})` : (piecesShort[at] ?? '')
    }),
    ...(rejectsDiffer ? [] : [`false rejects ${rejectWords[0]}`]),
    ...figures.map((words) => words.charAt(0).toLowerCase() + words.slice(1)),
  ]
  return `${parts.join('; ')}.`
}

function Row({ words, asked = '', cells }: { words: string; asked?: string; cells: readonly unknown[] }) {
  return (
    <tr>
      <th scope="row">
        {words}
        {asked === '' ? null : <span class="asked">{asked}</span>}
      </th>
      {cells.map((cell) => (
        <td>{cell as string}</td>
      ))}
    </tr>
  )
}

/** "must find 4 mm"; of two packs that ask for different sizes both. */
function askedWords(findings: readonly (Finding | null)[]): string {
  const sizes = [...new Set(findings.flatMap((finding) => (finding ? [finding.mustFindMm] : [])))]
  return sizes.every((size) => size === null)
    ? 'no size asked'
    : `must find ${sizes.map((size) => (size === null ? 'none' : String(size))).join(' or ')} mm`
}

/** "1.8 / 2.2"; "21.9 / nothing"; "none". */
function findingWords({ expectedMm, cautiousMm, demonstrated }: Finding): string {
  if (expectedMm === null) return 'not found'
  const promised = cautiousMm === null ? 'nothing' : sizeWords(cautiousMm)
  return `${sizeWords(expectedMm)} / ${promised}${demonstrated ? ', demonstrated' : ''}`
}

function FindingWords({ finding }: { finding: Finding | null }) {
  if (finding === null) return <>not looked for</>
  const { mark, words } = ANSWER_WORDS[finding.meets]
  return (
    <>
      {findingWords(finding)}
      {finding.meets === 'open' || finding.meets === 'cannot' ? null : (
        <span class="settings">
          <span aria-hidden="true">{mark}</span> {words}
        </span>
      )}
    </>
  )
}

const JUDGEMENT_WORDS: Readonly<Record<Claim['judgement'], string>> = {
  'better-than-possible': 'better than the physics allows',
  inside: 'within what the physics allows',
  loose: 'there is room to ask for less',
  'cannot-tell': 'cannot be told from this',
}

function Claims({ side, names }: ComparePageProps & { side: Side }) {
  if (side.claims.length === 0) return <>nothing</>
  return (
    <ul class="claims">
      {side.claims.map(({ given, judgement, text }) => (
        <li>
          <strong>
            {names.get(given.material) ?? given.material} {given.sizeMm} mm: {JUDGEMENT_WORDS[judgement]}.
          </strong>{' '}
          {text}
        </li>
      ))}
    </ul>
  )
}
