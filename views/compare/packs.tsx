import type { PackRow } from '../../src/compare/pack-rows.ts'
import type { AnswerRow } from '../../src/contract/answer.ts'
import { shortName } from '../words/machine.ts'
import { sizeWords } from '../words/size.ts'
import { ANSWER_WORDS } from '../words/verdict.ts'
import { packsWords, packWords } from './added-words.ts'
import { packInputs } from './pack-inputs.ts'
import type { ComparePageProps } from './props.ts'

/** Two packs: what the second makes of the answer, in which they differ, and the answer piece by piece. */
export function Packs(props: ComparePageProps) {
  const { comparison, piecesShort, names, packed, packedOther } = props
  const [first, second] = comparison.laid
  if (!first || !second) return null
  const differing = comparison.packs.filter(({ differs }) => differs)
  const changed = differing.filter((row) => !isSizeAlone(row, comparison))
  const bySize = differing.filter((row) => isSizeAlone(row, comparison))
  const sentences = [first, second].map(({ advice }) => advice.answer.sentence)
  const [onA, onB] = [
    <a href={`/advice?b=${packed}`}>Advice on A</a>,
    <a href={`/advice?b=${packedOther}`}>Advice on B</a>,
  ]
  const same = comparison.packs.filter(({ differs }) => !differs)
  const inputs = packInputs(first.brief, second.brief, names)
  return (
    <>
      <p class="answer">{packsWords(comparison.packs, piecesShort)}</p>
      {comparison.added.length > 0 ? (
        <ul class="pack-effects">
          {comparison.added.map((added) => (
            <li>{packWords(added, piecesShort)}</li>
          ))}
        </ul>
      ) : null}
      <section aria-labelledby="two-packs">
        <h2 id="two-packs">The two packs</h2>
        <section class="scroll" tabindex={0} aria-labelledby="packs-table">
          <table class="side-by-side">
            <caption id="packs-table">Only what differs; sizes in mm: expected / safe to promise</caption>
            <thead>
              <tr>
                <td />
                <th scope="col">A: this brief</th>
                <th scope="col">B: the other pack</th>
              </tr>
            </thead>
            <tbody>
              {inputs.map(({ words, first: one, second: other }) => (
                <tr>
                  <th scope="row">{words}</th>
                  <td>{one}</td>
                  <td>{other}</td>
                </tr>
              ))}
              {sentences[0] === sentences[1] ? null : (
                <tr>
                  <th scope="row">Answer</th>
                  <td>
                    {sentences[0]} {onA}
                  </td>
                  <td>
                    {sentences[1]} {onB}
                  </td>
                </tr>
              )}
              {changed.map((row) => (
                <tr>
                  <th scope="row">
                    {piecesShort[row.contaminant]}
                    <span class="asked">{askedWords(row)}</span>
                  </th>
                  {row.rows.map((one, which) => (
                    <td>
                      {one === null ? 'not looked for' : <RowWords row={one} which={which} {...props} />}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        {sentences[0] === sentences[1] ? (
          <p>
            The answer with both: {sentences[0]} {onA} {onB}
          </p>
        ) : null}
        {bySize.length > 0 ? (
          <p class="small">
            Answered alike at other sizes, side by side below:{' '}
            {bySize.map(({ contaminant }) => piecesShort[contaminant]).join('; ')}.
          </p>
        ) : null}
        {same.length > 0 ? (
          <p class="small">
            The same with both: {same.map(({ contaminant }) => piecesShort[contaminant]).join('; ')}.
          </p>
        ) : null}
      </section>
    </>
  )
}

/** Only the sizes differ, and they stand in the columns of that machine. */
const isSizeAlone = ({ rows: [one, other] }: PackRow, { sides }: ComparePageProps['comparison']) =>
  one !== null &&
  other !== null &&
  one.equipment === other.equipment &&
  one.meets === other.meets &&
  one.askedMm === other.askedMm &&
  sides.some(({ option, point }) => option.equipment === one.equipment && point.name === one.point)

function askedWords({ rows }: PackRow): string {
  const sizes = [...new Set(rows.flatMap((row) => (row ? [row.askedMm] : [])))]
  return sizes.every((size) => size === null)
    ? 'no size asked'
    : `must find ${sizes.map((size) => (size === null ? 'none' : String(size))).join(' or ')} mm`
}

function RowWords({ row, which, comparison }: ComparePageProps & { row: AnswerRow; which: number }) {
  const { mark, words } = ANSWER_WORDS[row.meets]
  const option = comparison.laid[which]?.advice.points
    .find(({ name }) => name === row.point)
    ?.options.find(({ equipment }) => equipment === row.equipment)
  const sizes = `${sizeWords(row.expectedMm)} / ${row.promisedMm === null ? 'nothing' : sizeWords(row.promisedMm)}`
  return (
    <>
      <span aria-hidden="true">{mark}</span> {words}
      {row.expectedMm === null ? '' : `, ${sizes}`}
      {option ? <span class="settings">{shortName(option)}</span> : null}
    </>
  )
}
