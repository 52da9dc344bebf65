import type { Contaminant } from '../contract/index.ts'
import { metals } from '../reference/electrical.ts'
import type { CoilFinding } from './assessment.ts'

/** The static-field detector reacts to what is magnetic, and has no size for it. */
export const reactsToStaticField = (contaminant: Contaminant): boolean =>
  metals.get(contaminant.material)?.magnetism === 'ferromagnetic'

/** A finding without any size. */
export function emptyFinding(
  index: number,
  answers: boolean,
  limitMm: number,
  calculation: string,
): CoilFinding {
  return {
    contaminant: index,
    answers,
    bestMm: null,
    bestRangeMm: null,
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
    calculation,
  }
}
