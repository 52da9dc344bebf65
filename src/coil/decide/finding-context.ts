import type { Arrangement, Opening } from '../opening/opening.ts'
import { CAUTION, type CoilParameters } from '../parameters.ts'
import type { Piece } from '../piece/piece.ts'
import { shapeLimitMm } from '../piece/target.ts'
import { emptyScene, type Hearing, hearing, type Scene } from '../scene.ts'
import { LEVELS, type Listening, orientedCurves, smallerMm, weakestMm } from './reading.ts'

/** Everything the findings of one machine at one point share. */
export interface FindingContext {
  readonly parameters: CoilParameters
  readonly cautious: CoilParameters
  readonly scene: Scene
  /** The scene with the product's conductivity at the top of its range, and with all at the unfavourable side. */
  readonly conductive: Scene
  readonly worst: Scene
  readonly arrangement: Arrangement
  readonly opening: Opening
  readonly thresholdZ: number
  readonly limitMm: number
  /** All choices of frequencies the machine allows, Hz. */
  readonly choices: readonly (readonly number[])[]
}

/** Spread of a scene: smaller where the food adds no signal, growing as it gets wet. */
export const spreadOf = (scene: Scene, parameters: CoilParameters): number =>
  parameters.drySpread + scene.wetness * (parameters.wetSpread - parameters.drySpread)

export const listening = (
  context: FindingContext,
  scene: Scene,
  frequenciesHz: readonly number[],
  parameters: CoilParameters,
): Listening => ({
  hearing: hearing(scene, frequenciesHz, parameters),
  thresholdZ: context.thresholdZ,
  spread: spreadOf(scene, parameters),
})

/** Largest size that counts for this piece, mm. */
export const limitOf = (context: FindingContext, piece: Piece): number =>
  Math.min(context.limitMm, shapeLimitMm(piece.shape))

/**
 * The empty opening at the choices that can be best there. Without food and pack the frequencies are
 * independent and share the power, so D² of a choice is the mean of its members' D²: where the machine may
 * choose, a single frequency is never beaten. `noise`: times as much noise as is assumed.
 */
export function emptyHearings(context: FindingContext, noise = 1): readonly Hearing[] {
  const singles = context.choices.filter((choice) => choice.length === 1)
  const parameters = { ...context.parameters, noiseM3: context.parameters.noiseM3 * noise }
  return (singles.length > 0 ? singles : context.choices).map((choice) =>
    hearing(emptyScene(context.scene), choice, parameters),
  )
}

/** The empty opening with the noise assumed, and with that on its favourable and its unfavourable side. */
export interface Empty {
  readonly usual: readonly Hearing[]
  readonly quiet: readonly Hearing[]
  readonly loud: readonly Hearing[]
}

export const emptyOf = (context: FindingContext): Empty => ({
  usual: emptyHearings(context),
  quiet: emptyHearings(context, 1 / CAUTION.noise),
  loud: emptyHearings(context, CAUTION.noise),
})

/** Size without product and spread at the best of the choices, mm; null where none finds the piece. */
export function bestMm(context: FindingContext, piece: Piece, hearings: readonly Hearing[]): number | null {
  const limitMm = limitOf(context, piece)
  let best: number | null = null
  for (const empty of hearings) {
    const curves = orientedCurves({ hearing: empty, thresholdZ: context.thresholdZ, spread: 0 }, piece)
    best = smallerMm(best, weakestMm(curves, LEVELS.found, limitMm))
  }
  return best
}

/** The best possible size with the noise of the machine on either side of what is assumed, mm; null where one finds nothing. */
export function bestRangeMm(
  context: FindingContext,
  piece: Piece,
  { quiet, loud }: Empty,
): readonly [number, number] | null {
  const [low, high] = [bestMm(context, piece, quiet), bestMm(context, piece, loud)]
  return low === null || high === null ? null : [low, high]
}
