import type { Finding } from '../../src/contract/advice.ts'
import { grouped } from '../words/grouped.ts'
import { sizeWords } from '../words/size.ts'
import { MEETS_WORDS, VERDICT_WORDS } from '../words/verdict.ts'
import type { ComparePageProps } from './props.ts'

/** Only what differs; the rest is named in one line. */
export function DifferencesPart({ comparison, pieces, rejectWords }: ComparePageProps) {
  const { sides, differences } = comparison
  const { verdicts, burdens, figures, sizes, rules, same } = differences
  const quotes = sides.some((side) => side.quotes.length > 0)
  const rejects = grouped(rejectWords, (words) => words).size > 1
  return (
    <section aria-labelledby="differs">
      <h2 id="differs">What differs</h2>
      <section class="scroll" tabindex={0} aria-labelledby="differs-table">
        <table class="side-by-side">
          <caption id="differs-table">
            Only what differs; sizes expected, then promise no better than, in mm
          </caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              {sides.map((side) => (
                <th scope="col">{side.words}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {verdicts ? (
              <Row
                words="Verdict"
                cells={verdicts.map((v) => `${VERDICT_WORDS[v].mark} ${VERDICT_WORDS[v].words}`)}
              />
            ) : null}
            {burdens ? <Row words="Burden, 1 to 5" cells={burdens.map(String)} /> : null}
            {figures.map((row) => (
              <Row words={row.words} cells={row.cells.map((cell) => cell ?? '–')} />
            ))}
            {rejects ? <Row words="False rejects" cells={rejectWords} /> : null}
            {sizes.map((row) => (
              <Row
                words={pieces[row.contaminant] ?? ''}
                cells={row.findings.map((finding) => (finding === null ? '–' : cellWords(finding)))}
              />
            ))}
            {rules.map((row) => (
              <Row words={row.title} cells={row.texts.map((text) => text ?? 'not so here')} prose />
            ))}
            {quotes ? (
              <Row
                words="Quoted to you"
                cells={sides.map((side) =>
                  side.quotes.length === 0 ? 'nothing' : side.quotes.map(({ text }) => text).join(' '),
                )}
                prose
              />
            ) : null}
          </tbody>
        </table>
      </section>
      <p class="small">
        The same for all:{' '}
        {sameWords(same.figures, same.contaminants, pieces, rejects ? null : rejectWords[0])}
      </p>
    </section>
  )
}

function sameWords(
  figures: readonly string[],
  contaminants: readonly number[],
  pieces: readonly string[],
  rejects: string | null | undefined,
): string {
  const parts = [
    ...figures.map((words) => words.charAt(0).toLowerCase() + words.slice(1)),
    ...contaminants.map((at) => `the sizes of ${pieces[at]}`),
    ...(rejects ? [`false rejects ${rejects}`] : []),
  ]
  return parts.length > 0 ? `${parts.join('; ')}.` : 'nothing.'
}

function Row({ words, cells, prose }: { words: string; cells: readonly string[]; prose?: boolean }) {
  return (
    <tr>
      <th scope="row">{words}</th>
      {cells.map((cell) => (
        <td class={prose ? 'prose' : ''}>{cell}</td>
      ))}
    </tr>
  )
}

/** "1.8 / 2.2 ● yes"; "21.9, nothing promised – no size asked"; "none ✕ cannot". */
function cellWords({ expectedMm, cautiousMm, meets }: Finding): string {
  const { mark, words } = MEETS_WORDS[meets]
  const sizes =
    expectedMm === null
      ? 'none'
      : cautiousMm === null
        ? `${sizeWords(expectedMm)}, nothing promised`
        : `${sizeWords(expectedMm)} / ${sizeWords(cautiousMm)}`
  return meets === 'open' ? `${sizes} (${words})` : `${sizes} ${mark} ${words}`
}
