import type { Point } from '../../contract/index.ts'
import type { CoilAssessment } from '../assessment.ts'
import { fittingOpening } from '../opening/opening.ts'
import type { Piece } from '../piece/piece.ts'
import type { Situation } from '../situation.ts'
import { type FindingContext, listening } from './finding-context.ts'
import { expectedAt } from './frequency-search.ts'

/**
 * What the smallest usual opening for this pack would find at the same frequencies, where the one in use is
 * larger; null where it is not. A product that fills it more may make a size larger, and then it shows.
 */
export function fittingSizes(
  situation: Situation,
  point: Point,
  context: FindingContext,
  pieces: readonly (Piece | null)[],
  frequenciesHz: readonly number[],
): CoilAssessment['fitting'] {
  const opening = fittingOpening(point)
  const used = situation.opening
  const larger =
    used.heightMm >= opening.heightMm &&
    used.widthMm >= opening.widthMm &&
    used.heightMm + used.widthMm > opening.heightMm + opening.widthMm
  if (situation.arrangement !== 'tunnel' || !larger) return null
  const scene = situation.sceneAt(situation.conductivity.valueSPerM, 'central', opening)
  const listen = listening(context, scene, frequenciesHz, context.parameters)
  return { opening, expectedMm: expectedAt(context, pieces, listen) }
}
