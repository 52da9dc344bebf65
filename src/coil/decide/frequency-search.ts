import type { FrequencyStep } from '../assessment.ts'
import type { Piece } from '../piece/piece.ts'
import { type FindingContext, limitOf, listening } from './finding-context.ts'
import { bestChoice } from './frequency-choice.ts'
import { unsuitableForIron } from './iron-unsuitable.ts'
import { LEVELS, type Listening, orientedCurves, weakestMm } from './reading.ts'

const sizeAt = (context: FindingContext, piece: Piece | null, listen: Listening): number | null =>
  piece === null ? null : weakestMm(orientedCurves(listen, piece), LEVELS.found, limitOf(context, piece))

/** Expected sizes of all pieces at one choice of frequencies; null for what is not a metal. */
export function expectedAt(
  context: FindingContext,
  pieces: readonly (Piece | null)[],
  listen: Listening,
): readonly (number | null)[] {
  return pieces.map((piece) => sizeAt(context, piece, listen))
}

/**
 * The size a choice is judged by: the expected one, but none where the frequencies do not suit iron at one of the
 * permeabilities it may have. A choice that holds for one value only is not made.
 */
function judgedMm(context: FindingContext, piece: Piece | null, listen: Listening): number | null {
  if (piece === null) return null
  for (const metal of [piece.metal, ...piece.permeabilities]) {
    if (!metal.ferromagnetic) continue
    const sizeMm = sizeAt(context, { ...piece, metal }, listen)
    if (unsuitableForIron(context, { ...piece, metal }, sizeMm, listen.hearing.frequenciesHz)) return null
  }
  return sizeAt(context, piece, listen)
}

export interface FrequencySearch {
  readonly chosen: FrequencyStep
  readonly listen: Listening
  readonly steps: readonly FrequencyStep[]
  readonly runnerUp: FrequencyStep | null
}

/** Tries all choices of frequencies and keeps the best; a machine without a choice is judged by none. */
export function searchFrequencies(
  context: FindingContext,
  pieces: readonly (Piece | null)[],
  mustFindMm: readonly (number | null)[],
): FrequencySearch {
  const alone = context.choices.length === 1
  const tried = context.choices.map((choice) => {
    const listen = listening(context, context.scene, choice, context.parameters)
    return {
      listen,
      frequenciesKHz: choice.map((f) => f / 1000),
      judgedMm: pieces.map((piece) =>
        alone ? sizeAt(context, piece, listen) : judgedMm(context, piece, listen),
      ),
    }
  })
  const { index, runnerUp, norms } = bestChoice(tried, mustFindMm)
  const steps = tried.map(
    ({ frequenciesKHz, judgedMm }, k): FrequencyStep => ({ frequenciesKHz, judgedMm, norm: norms[k]! }),
  )
  return {
    chosen: steps[index]!,
    listen: tried[index]!.listen,
    steps,
    runnerUp: runnerUp === null ? null : steps[runnerUp]!,
  }
}
