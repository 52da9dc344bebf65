import type { FrequencyStep } from '../assessment.ts'
import type { Piece } from '../piece/piece.ts'
import { type FindingContext, limitOf, listening } from './finding-context.ts'
import { bestStep, frequencyStep, hardestOf, surelyWorse } from './frequency-choice.ts'
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

export interface FrequencySearch {
  readonly chosen: FrequencyStep
  readonly listen: Listening
  /** The single frequencies, all together where that is a choice, and the chosen ones. */
  readonly steps: readonly FrequencyStep[]
}

/**
 * Tries the choices of frequencies in turn. A choice that already falls behind at the contaminant the best
 * one finds hardest is left unfinished, except where it is shown.
 */
export function searchFrequencies(
  context: FindingContext,
  pieces: readonly (Piece | null)[],
  mustFindMm: readonly (number | null)[],
): FrequencySearch {
  const most = Math.max(...context.choices.map((choice) => choice.length))
  let best: { step: FrequencyStep; listen: Listening } | null = null
  const shown: FrequencyStep[] = []
  for (const choice of context.choices) {
    const listen = listening(context, context.scene, choice, context.parameters)
    const show = choice.length === 1 || choice.length === most
    if (best && !show) {
      const hardest = hardestOf(best.step, mustFindMm)
      if (hardest !== null) {
        const sizeMm = sizeAt(context, pieces[hardest]!, listen)
        if (surelyWorse(sizeMm, mustFindMm[hardest]!, best.step)) continue
      }
    }
    const kHz = choice.map((f) => f / 1000)
    const step = frequencyStep(kHz, expectedAt(context, pieces, listen), mustFindMm)
    if (show) shown.push(step)
    if (!best || bestStep([best.step, step]) === step) best = { step, listen }
  }
  const { step, listen } = best!
  return { chosen: step, listen, steps: shown.includes(step) ? shown : [...shown, step] }
}
