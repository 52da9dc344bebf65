import { type SettlingFluid, steadySpeedMPerS } from '../density/settling.ts'
import { GRAVITY_M_PER_S2 } from '../physical-constants.ts'

/** A piece on its way past a magnet, and what holds it back. */
export interface Passing {
  /** Pull per volume at a distance from the surface, N/m³; falls with distance. */
  readonly pullNPerM3: (distanceM: number) => number
  readonly densityKgPerM3: number
  /** Diameter of the sphere of equal volume, m. */
  readonly diameterM: number
  /** Depth of the layer that passes, measured from the magnet, m. */
  readonly layerM: number
  /** Time the piece is beside the magnet, s. */
  readonly timeS: number
  /** True: the magnet is above and must lift the piece. */
  readonly lifts: boolean
  /** Pressure on the section of the piece that a bed or a yield stress puts against it, Pa. */
  readonly resistancePa: number
  /** Liquid it is drawn through; null in air, whose drag is nothing beside the pull. */
  readonly liquid: SettlingFluid | null
}

const STEPS = 60

/**
 * Depth of the layer from which a piece reaches the magnet in time, m, 0 to the layer's depth.
 * A distance z counts when the net pull there, f(z) − ρ·g (if lifted) − 1.5·P/d, is positive and the way is
 * done in time: √(2zρ/f_net) + z/u(f_net) ≤ t. The pull grows on the way, so both times are upper bounds.
 * 1.5/d is section over volume of a sphere. Validity: pieces smaller than the pole pitch, one at a time.
 * Without resistance and liquid the size of the piece cancels. Sources: `granular-drag`, `beris-1985`,
 * `haider-levenspiel`.
 */
export function captureDepthM(passing: Passing): number {
  const { densityKgPerM3, diameterM, layerM, timeS, liquid } = passing
  const against =
    (passing.lifts ? densityKgPerM3 * GRAVITY_M_PER_S2 : 0) + (1.5 * passing.resistancePa) / diameterM
  const inTime = (distanceM: number): boolean => {
    const net = passing.pullNPerM3(distanceM) - against
    if (net <= 0) return false
    const start = Math.sqrt((2 * distanceM * densityKgPerM3) / net)
    const drift = liquid ? distanceM / steadySpeedMPerS(diameterM, net, liquid, 1) : 0
    return start + drift <= timeS
  }
  if (inTime(layerM)) return layerM
  let low = 0
  let high = layerM
  for (let k = 0; k < STEPS; k++) {
    const middle = (low + high) / 2
    if (inTime(middle)) low = middle
    else high = middle
  }
  return low
}
