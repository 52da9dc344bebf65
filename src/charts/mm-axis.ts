import { scaleLog } from 'd3-scale'

/** A log axis in mm: where a size stands, in percent of the picture's width. */
export interface MmAxis {
  readonly fromMm: number
  readonly toMm: number
  readonly ticksMm: readonly number[]
  /** Sizes beyond the axis stand at its ends. */
  readonly percent: (mm: number) => number
}

const ENDS_MM = [0.05, 0.1, 0.15, 0.2, 0.3, 0.5, 0.7, 1, 1.5, 2, 3, 5, 7, 10, 15, 20, 30, 50, 70, 100]
const TICKS_MM = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100]
const FEW_TICKS = 4
const MARGIN_PERCENT = 2

/** The axis that holds all given sizes, ending on round steps; 0.5 to 10 mm where there are none. */
export function mmAxis(sizesMm: readonly (number | null)[]): MmAxis {
  const sizes = sizesMm.filter((size): size is number => size !== null && size > 0)
  const smallest = sizes.length > 0 ? Math.min(...sizes) : 0.5
  const largest = sizes.length > 0 ? Math.max(...sizes) : 10
  const fromMm = ENDS_MM.findLast((step) => step <= smallest * 0.95) ?? ENDS_MM[0]!
  const toMm = ENDS_MM.find((step) => step >= largest * 1.1) ?? ENDS_MM.at(-1)!
  const within = (steps: readonly number[]) => steps.filter((step) => step >= fromMm && step <= toMm)
  const ticksMm = within(TICKS_MM)
  const scale = scaleLog([fromMm, toMm], [MARGIN_PERCENT, 100 - MARGIN_PERCENT]).clamp(true)
  return {
    fromMm,
    toMm,
    ticksMm: ticksMm.length < FEW_TICKS ? within(ENDS_MM) : ticksMm,
    percent: (mm) => Number(scale(mm).toFixed(2)),
  }
}
