import type { ControlChance } from '../sizes/control-chance.ts'
import type { FragmentSizes } from '../sizes/fragment-sizes.ts'
import { meanChance, missed } from './misses.ts'

/** How far an assumption about fragments moves the estimate, the finds held fixed. */
export interface Moved {
  readonly what: string
  readonly meanChance: number
  /** Events arriving per million packs; moves against the mean chance because the finds do not change. */
  readonly arrive: number
  /** Missed per million packs, by smallest length counted. */
  readonly missed: readonly { readonly fromLengthMm: number; readonly perMillion: number }[]
}

/** The assumption as it stands, and with median, spread and shape moved: half, double, narrower, wider, thinner. */
export function variants(sizes: FragmentSizes): readonly { what: string; sizes: FragmentSizes }[] {
  const thinner = sizes.shapes.map((shape) => ({ ...shape, perLength: (shape.perLength * 2) / 3 }))
  return [
    { what: 'as assumed', sizes },
    { what: 'half the median length', sizes: { ...sizes, medianMm: sizes.medianMm / 2 } },
    { what: 'double the median length', sizes: { ...sizes, medianMm: sizes.medianMm * 2 } },
    { what: 'spread narrower by a fifth', sizes: { ...sizes, factor: 1 + (sizes.factor - 1) * 0.6 } },
    { what: 'spread wider by a quarter', sizes: { ...sizes, factor: 1 + (sizes.factor - 1) * 1.5 } },
    { what: 'pieces a third thinner for their length', sizes: { ...sizes, shapes: thinner } },
  ]
}

/** One control and its finds under each variant. Events per million packs found; lengths in mm. */
export function factorOfTwo(
  sizes: FragmentSizes,
  control: ControlChance,
  foundPerMillion: number,
  fromLengths: readonly number[],
): Moved[] {
  return variants(sizes).map(({ what, sizes: moved }) => {
    const mean = meanChance(moved, control)
    const arrive = foundPerMillion / mean
    return {
      what,
      meanChance: mean,
      arrive,
      missed: fromLengths.map((fromLengthMm) => ({
        fromLengthMm,
        perMillion: arrive * missed(moved, [control], fromLengthMm).independent,
      })),
    }
  })
}
