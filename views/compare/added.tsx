import type { Change } from '../../src/compare/what-it-adds.ts'
import { sizeWords } from '../words/size.ts'
import { MEETS_WORDS } from '../words/verdict.ts'
import { addedWords, basisWords } from './added-words.ts'
import type { ComparePageProps } from './props.ts'

const ASKED_WORDS: Readonly<Record<Change['asked'], string>> = {
  'now-met': 'reaches the size you must find',
  'met-by-both': 'both reach the size you must find',
  'met-by-neither': 'neither reaches the size you must find',
  'no-longer-met': 'no longer reaches the size you must find',
  'no-size-asked': 'no size asked',
}

/** What the dearer one adds: the sentence first, the millimetres under it. */
export function AddedPart({ comparison, pieces }: ComparePageProps) {
  const { added } = comparison
  return (
    <>
      {added.map((one) => (
        <p class="answer">{addedWords(one, pieces)}</p>
      ))}
      <p class="small">{basisWords(comparison)}</p>
      <section aria-labelledby="added">
        <h2 id="added">What the dearer one adds</h2>
        {added.map((one, at) => {
          const changes = [...one.gains, ...one.losses]
          const caption = `added-${at}`
          return changes.length === 0 ? (
            <p>
              {one.with.words} over {one.over.words}: no size differs by more than the model can tell.
            </p>
          ) : (
            <section class="scroll" tabindex={0} aria-labelledby={caption}>
              <table>
                <caption id={caption}>
                  {one.with.words} over {one.over.words}: expected sizes, mm
                </caption>
                <thead>
                  <tr>
                    <th scope="col">Contaminant</th>
                    <th scope="col" class="n">
                      With {one.over.words}
                    </th>
                    <th scope="col" class="n">
                      With {one.with.words}
                    </th>
                    <th scope="col" class="n">
                      Smaller by, mm
                    </th>
                    <th scope="col" class="n">
                      You must find, mm
                    </th>
                    <th scope="col">What that means</th>
                  </tr>
                </thead>
                <tbody>
                  {changes.map((change) => (
                    <ChangeRow change={change} piece={pieces[change.contaminant] ?? ''} />
                  ))}
                </tbody>
              </table>
            </section>
          )
        })}
      </section>
    </>
  )
}

function ChangeRow({ change, piece }: { change: Change; piece: string }) {
  const { from, to, smallerByMm, asked } = change
  return (
    <tr>
      <th scope="row">{piece}</th>
      <td class="n">{expected(from.expectedMm)}</td>
      <td class="n">{expected(to.expectedMm)}</td>
      <td class="n">{smallerByMm === null ? '–' : smallerWords(smallerByMm)}</td>
      <td class="n">{to.mustFindMm ?? '–'}</td>
      <td class="prose">
        {ASKED_WORDS[asked]}
        {to.mustFindMm === null ? '' : ` (${MEETS_WORDS[from.meets].words}, ${MEETS_WORDS[to.meets].words})`}
      </td>
    </tr>
  )
}

const expected = (mm: number | null) => (mm === null ? 'none' : sizeWords(mm))

/** To 0.01 mm, like the sizes it is the difference of; a minus where the size is larger. */
const smallerWords = (mm: number) => mm.toFixed(Math.abs(mm) < 1 ? 2 : 1).replace('-', '−')
