import type { DemonstratedRecord } from '../../src/contract/trial-records.ts'
import { shownWords } from '../words/demonstrated.ts'
import { sizeWords } from '../words/size.ts'

interface Sizes {
  readonly expectedMm: number | null
  readonly cautiousMm: number | null
}

/** One machine and piece before and after its trial. */
export interface Updated {
  readonly title: string
  readonly before: Sizes
  readonly after: Sizes
  readonly demonstrated: DemonstratedRecord | null
}

/** What the trial changes in the advice on this product, side by side; kept when the brief takes it in. */
export function BeforeAfter({ updated, packed }: { updated: readonly Updated[]; packed: string }) {
  return (
    <section aria-labelledby="into-the-brief">
      <h2 id="into-the-brief">What it makes of the prediction</h2>
      <p>
        The predicted curve, moved and steepened as far as the counts ask: two constants on a grid. Before the
        trial, the factor on all sizes spreads as from expected to safe to promise, the steepness by a factor
        of two (assumed); false rejects are those of the clean run. It holds for this piece, machine, setting,
        product and thickness, until any of them changes. The clean run says where the machine’s threshold
        stands, and so moves its other pieces here as well.
      </p>
      <section class="scroll" tabindex={0} aria-label="Before and after the trial">
        <table class="routes before-after">
          <caption>Before and after the trial, mm</caption>
          <thead>
            <tr>
              <th scope="col">Piece</th>
              <th scope="col">Expected before</th>
              <th scope="col">after</th>
              <th scope="col">Safe to promise before</th>
              <th scope="col">after</th>
              <th scope="col">Demonstrated</th>
            </tr>
          </thead>
          <tbody>
            {updated.map(({ title, before, after, demonstrated }) => (
              <tr>
                <th scope="row">{title}</th>
                <td class="n">{sizeWords(before.expectedMm)}</td>
                <td class="n">{sizeWords(after.expectedMm)}</td>
                <td class="n">{sizeWords(before.cautiousMm)}</td>
                <td class="n">{sizeWords(after.cautiousMm)}</td>
                <td>{demonstrated ? shownWords(demonstrated) : 'not demonstrated'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p>
        <a href={`/advice?b=${packed}`}>The advice with this trial in the brief</a>, where a demonstrated size
        stands as such and not as a predicted one; <a href={`/brief?b=${packed}`}>the brief with it</a>.
      </p>
    </section>
  )
}
