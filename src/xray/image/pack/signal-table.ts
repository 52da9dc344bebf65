import type { ChannelResponse } from '../../detector/detector.ts'
import type { ExposedPack } from './exposed-pack.ts'

/**
 * Log of a channel's mean signal per pixel, relative to the open beam, over millimetres of solid food and of
 * container wall, with the energy a recorded quantum carries there. Read linearly between points: the
 * curvature is the spread of μ within the channel, under 1e-4 at these steps.
 */
export interface SignalTable {
  readonly foodStepMm: number
  readonly foodSteps: number
  readonly wallStepMm: number
  readonly wallSteps: number
  /** −ln(S / S_open), [wall][food]. */
  readonly attenuation: Float64Array
  /** Mean signal per pixel and line with nothing on the belt (keV, or counts). */
  readonly openSignal: number
  /** Variance of the photons per unit of signal, [wall][food]: Σ N·ab·e² / (S·swank). */
  readonly quantum: Float64Array
  /** Read noise, unit of the signal. */
  readonly readNoise: number
}

const FOOD_STEPS = 256
const WALL_STEPS = 64

/** Responses that photons reach, in the order of the exposed pack's channels. */
function usedResponses(exposed: ExposedPack): ChannelResponse[] {
  return exposed.build.channels.filter((response) => {
    for (let i = 0; i < exposed.channels.bins; i++)
      if (exposed.open[i]! * response.absorbed[i]! > 0) return true
    return false
  })
}

/**
 * Tables of all channels up to mostFoodMm of solid food and mostWallMm of wall. Parts of the pack other than
 * the wall lie in every ray.
 */
export function signalTables(
  exposed: ExposedPack,
  mostFoodMm: number,
  wall: { readonly muPerMm: Float64Array; readonly mostMm: number } | null,
): SignalTable[] {
  const { open, pack } = exposed
  const { bins } = exposed.channels
  const foodStepMm = Math.max(mostFoodMm, 1) / FOOD_STEPS
  const wallSteps = wall ? WALL_STEPS : 0
  const wallStepMm = wall ? Math.max(wall.mostMm, 0.1) / WALL_STEPS : 1
  const fixed = new Float64Array(bins)
  for (const part of pack.parts) {
    if (wall && part.muPerMm === wall.muPerMm) continue
    for (let i = 0; i < bins; i++) fixed[i]! += part.muPerMm[i]! * part.mm * part.crossings
  }
  return usedResponses(exposed).map((response) => {
    const arriving = new Float64Array(bins)
    let openSignal = 0
    for (let i = 0; i < bins; i++) {
      const contribution = open[i]! * response.absorbed[i]! * response.recorded[i]!
      openSignal += contribution
      arriving[i] = contribution * Math.exp(-fixed[i]!)
    }
    const attenuation = new Float64Array((wallSteps + 1) * (FOOD_STEPS + 1))
    const quantum = new Float64Array(attenuation.length)
    const perFoodStep = Float64Array.from({ length: bins }, (_, i) =>
      Math.exp(-pack.solidMuPerMm[i]! * foodStepMm),
    )
    for (let w = 0; w <= wallSteps; w++) {
      const reaching = arriving.map((n, i) => (wall ? n * Math.exp(-wall.muPerMm[i]! * w * wallStepMm) : n))
      for (let f = 0; f <= FOOD_STEPS; f++) {
        let signal = 0
        let squared = 0
        for (let i = 0; i < bins; i++) {
          signal += reaching[i]!
          squared += reaching[i]! * response.recorded[i]!
          reaching[i]! *= perFoodStep[i]!
        }
        const at = w * (FOOD_STEPS + 1) + f
        attenuation[at] = -Math.log(Math.max(signal, 1e-30) / openSignal)
        quantum[at] = squared / Math.max(signal, 1e-30) / response.swank
      }
    }
    return {
      foodStepMm,
      foodSteps: FOOD_STEPS,
      wallStepMm,
      wallSteps,
      attenuation,
      openSignal,
      quantum,
      readNoise: response.readNoise,
    }
  })
}

/** Attenuation −ln(S/S_open) at millimetres of food and wall; beyond the table its last interval goes on. */
export function attenuationAt(table: SignalTable, foodMm: number, wallMm: number): number {
  const { foodSteps, wallSteps, attenuation } = table
  const x = Math.max(0, foodMm / table.foodStepMm)
  const i = Math.min(foodSteps - 1, Math.floor(x))
  const s = x - i
  const row = (w: number) => {
    const at = w * (foodSteps + 1) + i
    return attenuation[at]! + s * (attenuation[at + 1]! - attenuation[at]!)
  }
  if (wallSteps === 0) return row(0)
  const y = Math.max(0, wallMm / table.wallStepMm)
  const j = Math.min(wallSteps - 1, Math.floor(y))
  const below = row(j)
  return below + (y - j) * (row(j + 1) - below)
}
