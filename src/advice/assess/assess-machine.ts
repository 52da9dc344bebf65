import { assessCoil } from '../../coil/assess-coil.ts'
import {
  type Brief,
  type Contaminant,
  DETECTOR_FAMILIES,
  type Finding,
  type Machine,
  type Point,
} from '../../contract/index.ts'
import { assessRemoval } from '../../separation/assess-removal.ts'
import type { RemovalAssessment, RemovalMachine } from '../../separation/assessment.ts'
import { assessXray } from '../../xray/assess.ts'
import { placeId } from '../facts/place-id.ts'
import type { AssessedOption } from '../stages.ts'
import { asItRejects } from './clean-run.ts'
import { coilFindings, xrayFindings } from './findings.ts'
import type { LinedUp } from './line-up.ts'
import { withOwnConstants } from './own-constants.ts'
import { residualAsRead, signalReadIn } from './product-signal.ts'
import { remembered } from './remembered.ts'

/** Assessments kept: an advice is searched again and again with all but one machine or point unchanged. */
const KEPT = 160

/** An input without what no physics reads, so that a changed severity or shift does not start it anew. */
const keyOf = <Input extends { readonly point: Point; readonly contaminants: readonly Contaminant[] }>(
  input: Input,
) => {
  const { hoursPerDay: _hours, checkIntervalMin: _check, reactMin: _react, ...point } = input.point
  const contaminants = input.contaminants.map(
    ({ severity: _s, likelihood: _l, basis: _b, foundPerMillionPacks: _f, entersAt: _e, ...piece }) => piece,
  )
  return { ...input, point, contaminants }
}

const xray = remembered(assessXray, KEPT, keyOf)
const coil = remembered(assessCoil, KEPT, keyOf)
const residualReadAs = remembered(residualAsRead, KEPT, keyOf)
const removal = remembered(assessRemoval, KEPT, keyOf)

/** One detector at one point, worked out by its family's physics; null for a machine that only removes. */
export function assessDetector(
  brief: Brief,
  pointIndex: number,
  { machine }: LinedUp,
): { assessed: AssessedOption; findings: Finding[] } | null {
  const point = asItRejects(brief, pointIndex, machine.id, 'all')
  const before = asItRejects(brief, pointIndex, machine.id, 'by themselves')
  const { contaminants } = brief
  const at = { pointIndex, equipment: machine.id }
  const prefix = placeId({ point: pointIndex, equipment: machine.id })
  switch (machine.family) {
    case 'xray': {
      const input = { machine, point, contaminants, prefix }
      const assessment = xray(input)
      const unmoved = () => xrayFindings(brief, at, xray({ ...input, point: before }))
      const findings = withOwnConstants(brief, at, xrayFindings(brief, at, assessment), unmoved)
      return { assessed: { family: 'xray', pointIndex, machine, assessment }, findings }
    }
    case 'coil':
    case 'static-field': {
      const input = {
        machine,
        point,
        contaminants,
        idPrefix: prefix,
        ...(machine.family === 'coil' && machine.mostAtOnce ? { mostAtOnce: machine.mostAtOnce } : {}),
      }
      const read = signalReadIn(brief, at)
      const productSignal = read && residualReadAs({ ...input, point: before, ...read })
      const assessment = coil(productSignal ? { ...input, point: { ...point, productSignal } } : input)
      const unmoved = () => coilFindings(brief, at, coil({ ...input, point: before }))
      const findings = withOwnConstants(brief, at, coilFindings(brief, at, assessment), unmoved)
      return { assessed: { family: machine.family, pointIndex, machine, assessment }, findings }
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
          removal({
            machine,
            point,
            contaminants: brief.contaminants,
            prefix: placeId({ point: pointIndex, equipment: machine.id }),
          }),
        ]
      : [],
  )
}

const isRemoval = (machine: Machine): machine is RemovalMachine => !DETECTOR_FAMILIES.includes(machine.family)
