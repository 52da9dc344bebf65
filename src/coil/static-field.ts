import type { Contaminant } from '../contract/index.ts'
import { metals } from '../reference/electrical.ts'
import type { CoilFinding } from './assessment.ts'

/** Why the static-field detector has no size for this piece, and whether it reacts at all. */
export function staticFieldNote(contaminant: Contaminant): { answers: boolean; note: string } {
  const metal = metals.get(contaminant.material)
  if (!metal) return { answers: false, note: 'Not a metal: a magnetic field does not show it.' }
  if (metal.magnetism === 'ferromagnetic') {
    return {
      answers: true,
      note: 'Seen through foil once magnetised on the way in. No size is computed: what limits it (movement, remanence, outside fields) is not modelled; find it by trial on the pack.',
    }
  }
  return {
    answers: false,
    note:
      metal.magnetism === 'weak'
        ? 'Annealed austenitic steel is hardly magnetic: a static field misses it.'
        : 'Not magnetic: a static field misses it.',
  }
}

/** A finding without any size. */
export function emptyFinding(
  index: number,
  answers: boolean,
  note: string,
  limitMm: number,
  calculation: string,
): CoilFinding {
  return {
    contaminant: index,
    answers,
    bestMm: null,
    halfMm: null,
    expectedMm: null,
    sureMm: null,
    cautiousMm: null,
    chanceAtMustFind: null,
    chanceAnyOrientation: null,
    curve: { sizesMm: [], chance: [] },
    limitMm,
    weakOrientation: null,
    orientations: [],
    missedAgain: [],
    frequencyUnsuitable: false,
    floorMm: null,
    widest: '',
    zones: [],
    note,
    calculation,
  }
}
