import { mmAxis } from '../../../src/charts/mm-axis.ts'
import { SizeLadder } from '../../../src/charts/size-ladder.tsx'

const SAMPLE = { bestMm: 1.25, halfMm: 1.6, expectedMm: 2, sureMm: 2.5, cautiousMm: 3.2 }

/** How to read the ladder, on an invented row, with what the words mean. */
export function LadderKey() {
  return (
    <div class="ladder-key">
      <p>
        A <strong>findable size</strong> (the trade says sensitivity) is the smallest test piece above which
        every size is found 9 times in 10 at the false-reject rate you accept, in the worst position.
      </p>
      <details>
        <summary>How to read the bars</summary>
        <SizeLadder
          id="picture-key"
          title="How to read a size ladder"
          description="An invented machine: best possible 1.25 mm, found half the time at 1.6 mm, expected 2 mm, almost always found at 2.5 mm, promise no better than 3.2 mm; to find: 4 mm."
          axis={mmAxis([1, 5])}
          mustFindMm={4}
          mustFindWords="you must find 4 mm"
          groups={[
            {
              name: '',
              rows: [
                { ...SAMPLE, label: 'an invented machine', mark: '● yes', numbers: '', ruledOut: false },
              ],
            },
          ]}
        />
        <dl class="key">
          <dt>Tick on the left</dt>
          <dd>best possible: no machine of this build does better, however it is set</dd>
          <dt>Left end of the bar</dt>
          <dd>expected, at the settings shown</dd>
          <dt>Right end of the bar</dt>
          <dd>
            promise no better than this; hatched to the edge where nothing can be promised; hollow where a
            rule rules the machine out
          </dd>
          <dt>Thin line with caps</dt>
          <dd>from the size found half the time to the size found 995 times in 1,000</dd>
          <dt>Upright line through all rows</dt>
          <dd>the size you must find</dd>
        </dl>
      </details>
      <p class="provisional">
        <strong>Provisional:</strong> expected and promised sizes rest on a few practice constants, fitted to
        common-practice readings of one pack, with no published source; their ranges are in the promised size.
        Trust the order and the trends more than the last tenth of a millimetre.
      </p>
    </div>
  )
}
