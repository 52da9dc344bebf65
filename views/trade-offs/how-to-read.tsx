import type { Series } from '../../src/trade-offs/size-against.ts'

/** What the lines and areas of a size picture mean. */
export function HowToRead({ series }: { series: readonly Series[] }) {
  const skipped = series.some((one) => one.steps.some(({ cautiousKnown }) => !cautiousKnown))
  return (
    <p class="small">
      Thick line: expected. Grey up from it: safe to promise at its upper edge; hatched to the top where
      nothing can be promised. Thin line: best possible. A break is a place without a size, with the reason
      under it. A dotted join is a change of setting, for the contaminants the machine finds hardest: where
      between the two points it changes is not worked out. The strip beneath says how it is set.
      {skipped
        ? ' What can be promised takes longest to compute and is worked out at every other point.'
        : ''}{' '}
      Beyond the model: larger than half the food in the beam or 25 mm, for a metal detector half its height
      or 12 mm. Expected and promised sizes rest on constants fitted to common-practice readings: provisional.
    </p>
  )
}
