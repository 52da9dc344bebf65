import type { LineAnswer } from '../../src/contract/lines.ts'
import { type Names, pieceShort } from '../words/contaminant.ts'
import { sizeWords } from '../words/size.ts'

export interface SaidAdvice {
  readonly sentence: string
  readonly answers: readonly LineAnswer[]
  readonly machines: readonly {
    readonly point: string
    readonly equipment: string
    readonly label: string
  }[]
}

/** What an advice said when it was kept: its headline and what answers for each contaminant. */
export function Said({ said, names }: { said: SaidAdvice; names: Names }) {
  const { sentence, answers, machines } = said
  const labelOf = (one: LineAnswer) =>
    machines.find(({ point, equipment }) => point === one.point && equipment === one.equipment)?.label
  return (
    <>
      <p>{sentence}</p>
      <section class="scroll" aria-label="What the advice said" tabindex={0}>
        <table class="kept-table">
          <thead>
            <tr>
              <th scope="col">Contaminant</th>
              <th scope="col">Asked, mm</th>
              <th scope="col">Safe to promise, mm</th>
              <th scope="col">Expected, mm</th>
              <th scope="col">Found by</th>
            </tr>
          </thead>
          <tbody>
            {answers.map((one) => (
              <tr>
                <th scope="row">
                  {pieceShort(one, names)}
                  {new Set(answers.map(({ line }) => line)).size > 1 ? `, ${one.line}` : ''}
                </th>
                <td class="n">{sizeWords(one.askedMm)}</td>
                <td class="n">{sizeWords(one.promisedMm)}</td>
                <td class="n">{sizeWords(one.expectedMm)}</td>
                <td class="what">{labelOf(one) ?? one.left.text}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  )
}
