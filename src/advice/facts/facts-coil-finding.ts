import type { CoilAssessment, CoilFinding } from '../../coil/assessment.ts'
import type { Brief } from '../../contract/index.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { writeSizes } from './facts-sizes.ts'
import { placeId } from './place-id.ts'

/** Facts of one contaminant in front of one metal detector. */
export function factsForCoilFinding(
  brief: Brief,
  pointIndex: number,
  machineId: string,
  assessment: CoilAssessment,
  contaminant: number,
): FactSheet {
  const write = new FactWriter(placeId({ point: pointIndex, equipment: machineId, contaminant }), brief)
  const finding = assessment.findings.find((one) => one.contaminant === contaminant)
  if (!finding) return write.sheet()
  write.computed('finding.answers', finding.answers)
  if (assessment.family === 'coil') writeFinding(write, finding, assessment)
  return write.sheet()
}

function writeFinding(write: FactWriter, finding: CoilFinding, { calculations }: CoilAssessment): void {
  const base = finding.calculation.slice(0, finding.calculation.lastIndexOf('.') + 1)
  const say = (id: string, value: string | number | boolean, name = 'expected') => {
    const calculation =
      calculations.find((one) => one.id === base + name)?.id ??
      calculations.find((one) => one.id === finding.calculation)?.id
    write.computed(id, value, calculation)
  }
  writeSizes(say, finding)
  say('finding.weakOrientation', finding.weakOrientation ?? 'none')
  const sizes = finding.orientations.flatMap(({ expectedMm }) => expectedMm ?? [])
  if (sizes.length === 2) say('finding.orientationRatio', Math.max(...sizes) / Math.min(...sizes))
  say('finding.missedAgain', finding.missedAgain.length)
  const [first] = finding.missedAgain
  if (first) say('finding.missedFromMm', first.fromMm)
  say('finding.frequencyUnsuitable', finding.frequencyUnsuitable)
  say('finding.atFloor', finding.widest === 'common-practice floor', 'cautious')
  if (finding.bestMm !== null && finding.expectedMm !== null)
    say('finding.costOfFood', finding.expectedMm / finding.bestMm)
}
