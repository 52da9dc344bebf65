import { assessCoil } from '../coil/assess-coil.ts'
import { type Brief, DETECTOR_FAMILIES, type Finding, type Machine } from '../contract/index.ts'
import { assessRemoval } from '../separation/assess-removal.ts'
import type { RemovalAssessment, RemovalMachine } from '../separation/assessment.ts'
import { assessXray } from '../xray/assess.ts'
import { coilFindings, xrayFindings } from './findings.ts'
import type { AssessedOption } from './judge.ts'
import type { LinedUp } from './line-up.ts'

/** One detector at one point, worked out by its family's physics; null for a machine that only removes. */
export function assessDetector(
  brief: Brief,
  pointIndex: number,
  { machine }: LinedUp,
): { assessed: AssessedOption; findings: Finding[] } | null {
  const point = brief.points[pointIndex]!
  const { contaminants } = brief
  const prefix = `p${pointIndex}.${machine.id}`
  switch (machine.family) {
    case 'xray': {
      const assessment = assessXray({ machine, point, contaminants, prefix })
      const findings = xrayFindings(brief, pointIndex, assessment)
      return { assessed: { family: 'xray', pointIndex, machine, assessment }, findings }
    }
    case 'coil':
    case 'static-field': {
      const assessment = assessCoil({
        machine,
        point,
        contaminants,
        idPrefix: prefix,
        ...(machine.family === 'coil' && machine.mostAtOnce ? { mostAtOnce: machine.mostAtOnce } : {}),
      })
      const { family } = machine
      return {
        assessed: { family, pointIndex, machine, assessment },
        findings: coilFindings(brief, assessment),
      }
    }
    default:
      return null
  }
}

/** What the machines upstream of the detectors take out at one point, in the order of the line-up. */
export function assessRemovals(
  brief: Brief,
  pointIndex: number,
  line: readonly LinedUp[],
): RemovalAssessment[] {
  const point = brief.points[pointIndex]!
  return line.flatMap(({ machine }) =>
    isRemoval(machine)
      ? [
          assessRemoval({
            machine,
            point,
            contaminants: brief.contaminants,
            prefix: `p${pointIndex}.${machine.id}`,
          }),
        ]
      : [],
  )
}

const isRemoval = (machine: Machine): machine is RemovalMachine => !DETECTOR_FAMILIES.includes(machine.family)
