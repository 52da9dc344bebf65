import { type ControlChance, meanOverPlaces } from '../sizes/control-chance.ts'
import { type FragmentSizes, overPieces } from '../sizes/fragment-sizes.ts'

/** Mean chance over everything that arrives: what turns finds into pieces arriving. */
export function meanChance(sizes: FragmentSizes, control: ControlChance): number {
  return overPieces(sizes, 0, (d) => meanOverPlaces(control, d))
}

/** Share of arriving pieces that the controls before one let through and that one finds. */
export function foundAfter(
  sizes: FragmentSizes,
  before: readonly ControlChance[],
  control: ControlChance,
): number {
  return overPieces(
    sizes,
    0,
    (d) => before.reduce((left, one) => left * (1 - meanOverPlaces(one, d)), 1) * meanOverPlaces(control, d),
  )
}

/** Share of arriving pieces that pass controls in series, from a smallest length counted. */
export interface Missed {
  /** Each control finds independently, given the size: the chances multiply under the integral. */
  readonly independent: number
  /** A piece that the better one misses is missed by all: no gain from a second control. The high end. */
  readonly dependent: number
}

/**
 * Missed share of controls in series: ∫ f·Π(1 − Pⱼ) and ∫ f·min(1 − Pⱼ). Never a product of averages: controls
 * miss the same small and thin pieces, so that product is several times too low. No control at all: all pass.
 */
export function missed(
  sizes: FragmentSizes,
  controls: readonly ControlChance[],
  fromLengthMm: number,
): Missed {
  const misses = (d: number) => controls.map((control) => 1 - meanOverPlaces(control, d))
  return {
    independent: overPieces(sizes, fromLengthMm, (d) => misses(d).reduce((all, one) => all * one, 1)),
    dependent: overPieces(sizes, fromLengthMm, (d) => Math.min(1, ...misses(d))),
  }
}
