import type { Widest } from '../assessment.ts'
import { hasDirection, type Piece } from '../piece/piece.ts'
import type { Orientation, TargetMetal } from '../piece/target.ts'
import { type FindingContext, limitOf, listening } from './finding-context.ts'
import { floorMm } from './floor.ts'
import { unsuitableForIron } from './iron-unsuitable.ts'
import { lastCrossingMm } from './last-crossing.ts'
import { curveOf, LEVELS, type Listening, largerMm } from './reading.ts'

/** Angles tried for a piece with a direction, as cos² to the travel. */
const SHARES = [0, 1 / 6, 2 / 6, 3 / 6, 4 / 6, 5 / 6, 1]

/** Worst size over orientations and over the metals the word may mean. */
function worstMm(
  heard: Listening,
  piece: Piece,
  shares: readonly number[],
  family: readonly TargetMetal[],
  limitMm: number,
): number | null {
  let size: number | null = 0
  for (const metal of family) {
    for (const share of shares) {
      size = largerMm(size, lastCrossingMm(curveOf(heard, piece, share, metal), LEVELS.found, limitMm))
      if (size === null) return null
    }
  }
  return size
}

/** True where iron of one of the permeabilities it may have would not be trusted at this size, mm. */
const turnsAtSome = (
  context: FindingContext,
  piece: Piece,
  frequenciesHz: readonly number[],
  sizeMm: number | null,
): boolean =>
  piece.permeabilities.some((metal) => unsuitableForIron(context, { ...piece, metal }, sizeMm, frequenciesHz))

export interface CautionRange {
  readonly cautiousMm: number | null
  readonly floorMm: number | null
  readonly widest: Widest
}

/**
 * The size that is safe to promise: conductivity at the top of its range, residuals × 1.5 (× 1.2 where read),
 * noise × 1.3, the worst permeability of iron, the worst of seven angles, the worst metal of the family, film at its
 * highest conductance; never below
 * the common-practice floor nor below `expectedMm`. null above the limit.
 */
export function cautionRange(
  context: FindingContext,
  piece: Piece,
  frequenciesHz: readonly number[],
  expectedMm: number | null,
  weak: Orientation | null,
): CautionRange {
  const floor = floorMm(piece, context.arrangement, context.opening, weak, frequenciesHz)
  if (expectedMm === null) return { cautiousMm: null, floorMm: floor, widest: '' }
  const limitMm = limitOf(context, piece)
  const { parameters, cautious, scene } = context
  const own = [piece.metal]
  const range = [...own, ...piece.permeabilities]
  const weakShare = weak === 'across' ? [0] : [1]
  const allShares = hasDirection(piece.shape) ? SHARES : [1]
  const at = (listen: Listening, shares = weakShare, family: readonly TargetMetal[] = own) =>
    worstMm(listen, piece, shares, family, limitMm)
  const hear = (changed: Partial<FindingContext['parameters']>, seen = scene) =>
    listening(context, seen, frequenciesHz, { ...parameters, ...changed })
  const central = hear({})
  const alone: [Widest, number | null][] = [
    ['noise', at(hear({ noiseM3: cautious.noiseM3 }))],
    [
      'product and pack residual',
      at(
        hear({
          block: cautious.block,
          stream: cautious.stream,
          read: cautious.read,
          wrapper: cautious.wrapper,
        }),
      ),
    ],
    ['product conductivity', at(hear({}, context.conductive))],
  ]
  if (scene.layers.some(({ film }) => film)) {
    alone.push(['film resistance', at(hear({}, { ...scene, conductance: 'most' }))])
  }
  if (allShares.length > 1) alone.push(['orientation', at(central, allShares)])
  if (piece.permeabilities.length > 0) alone.push(['permeability of iron', at(central, weakShare, range)])
  if (piece.family.length > 1) alone.push(['grade of the metal', at(central, weakShare, piece.family)])
  const computed = at(listening(context, context.worst, frequenciesHz, cautious), allShares, [
    ...piece.family,
    ...piece.permeabilities,
  ])
  if (turnsAtSome(context, piece, frequenciesHz, computed))
    return { cautiousMm: null, floorMm: floor, widest: 'permeability of iron' }
  const rank = ([, size]: [Widest, number | null]) => size ?? Infinity
  const widest = alone.reduce((most, other) => (rank(other) > rank(most) ? other : most))
  if (computed !== null && floor !== null && floor > Math.max(computed, expectedMm)) {
    return { cautiousMm: floor <= limitMm ? floor : null, floorMm: floor, widest: 'common-practice floor' }
  }
  return { cautiousMm: largerMm(computed, expectedMm), floorMm: floor, widest: widest[0] }
}
