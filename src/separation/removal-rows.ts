import type { Removal } from '../contract/index.ts'
import type { RemovalAssessment } from './assessment.ts'

/** The rows of the advice: what applies, in the contract's shape, in the order of the contaminants; rules have not spoken yet. */
export function removalRows(assessment: RemovalAssessment): readonly Removal[] {
  return assessment.findings
    .filter((found) => found.applicable)
    .map((found) => ({
      equipment: assessment.equipment,
      label: assessment.label,
      contaminant: found.contaminant,
      shareRemoved: [found.shareRemoved[0], found.shareRemoved[1]],
      ceiling: found.ceiling,
      neverRemoves: found.neverRemoves,
      condition: found.condition,
      because: found.because,
      goodProductLost: found.goodProductLost && [found.goodProductLost[0], found.goodProductLost[1]],
      goodProductLostUnit: found.goodProductLostUnit,
      unsuitable: '',
      reasons: [],
      calculation: found.calculation,
    }))
}
