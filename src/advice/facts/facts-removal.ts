import type { Brief } from '../../contract/index.ts'
import type { RemovalAssessment } from '../../separation/assessment.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { placeId } from './place-id.ts'

/** Facts of one machine that takes pieces out, at one point. */
export function factsForRemoval(brief: Brief, pointIndex: number, assessment: RemovalAssessment): FactSheet {
  const { equipment, label, family, calculations } = assessment
  const write = new FactWriter(placeId({ point: pointIndex, equipment }), brief)
  write.fromMachine('machine.label', label, equipment)
  if (family === 'sieve') {
    const step = (name: string) => calculations.find(({ id }) => id.endsWith(`.${equipment}.${name}`))
    const mesh = step('mesh') ?? step('mesh-needed')
    const grain = step('largest-grain')
    if (typeof mesh?.value === 'number') write.computed('sieve.meshMm', mesh.value, mesh.id)
    if (typeof grain?.value === 'number') write.computed('sieve.largestGrainMm', grain.value, grain.id)
  }
  return write.sheet()
}

/** Facts of one contaminant in front of such a machine; shares only where it has a use for it. */
export function factsForRemovalFinding(
  brief: Brief,
  pointIndex: number,
  assessment: RemovalAssessment,
  contaminant: number,
): FactSheet {
  const { equipment } = assessment
  const write = new FactWriter(placeId({ point: pointIndex, equipment, contaminant }), brief)
  const found = assessment.findings.find((one) => one.contaminant === contaminant)
  if (!found) return write.sheet()
  write.computed('removal.applicable', found.applicable)
  if (found.applicable) {
    write.computed('removal.leastPct', 100 * found.shareRemoved[0], found.calculation)
    write.computed('removal.mostPct', 100 * found.shareRemoved[1], found.calculation)
    write.computed('removal.ceilingPct', 100 * found.ceiling, found.calculation)
  }
  return write.sheet()
}
