import { capital } from '../words/capital.ts'
import { INPUT_WORDS } from '../words/trade-offs.ts'
import { inputAxis, sizesAxis } from './axes-of.ts'
import { HowToRead } from './how-to-read.tsx'
import type { MetalPicture } from './metal-props.ts'
import { SizeNumbers } from './size-numbers.tsx'
import { SizePanel } from './size-panel.tsx'

/** Findable size against each thing that moves a metal detector, on one size axis. */
export function MetalSizes({ picture, print }: { picture: MetalPicture; print: boolean }) {
  const { series, mustFindMm, piece, measure, frequenciesKHz } = picture
  const moved = series.filter((one) => one.series.steps.length > 0)
  const y = sizesAxis(
    moved.map((one) => one.series),
    mustFindMm,
  )
  return (
    <section aria-labelledby="sizes">
      <h2 id="sizes">What moves the findable size</h2>
      <p>
        {capital(piece)}; its size is the {measure}. One thing at a time, everything else as in the brief.
        {frequenciesKHz.length > 1
          ? ` The machine runs ${frequenciesKHz.join(' and ')} kHz together; the first picture shows what each frequency alone would do.`
          : ''}
      </p>
      <HowToRead series={moved.map((one) => one.series)} />
      {series
        .filter((one) => one.series.steps.length === 0)
        .map((one) => (
          <p>
            No picture for the {INPUT_WORDS[one.series.input].name}: the brief gives the conductivity itself.
          </p>
        ))}
      <div class="ladders">
        {moved.map((one) => (
          <SizePanel
            id={`sizes-${one.series.input}`}
            heading={`Against ${INPUT_WORDS[one.series.input].name}`}
            series={one.series}
            axes={{ x: inputAxis([one.series], INPUT_WORDS[one.series.input].name, one.unit, one.scale), y }}
            unit={one.unit}
            mustFindMm={mustFindMm}
          />
        ))}
      </div>
      <ul class="small">
        {moved.map((one) => (
          <li>
            {INPUT_WORDS[one.series.input].name}: {INPUT_WORDS[one.series.input].held}
          </li>
        ))}
      </ul>
      <SizeNumbers
        rows={moved.map((one) => ({
          id: one.series.input,
          heading: `Against ${INPUT_WORDS[one.series.input].name}`,
          series: one.series,
          unit: one.unit,
        }))}
        print={print}
      />
    </section>
  )
}
