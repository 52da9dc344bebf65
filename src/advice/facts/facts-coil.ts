import type { CoilAssessment } from '../../coil/assessment.ts'
import type { Brief, Machine } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { pointAt } from './facts.ts'
import { writeCleanRun } from './facts-clean-run.ts'
import { writeBackground } from './facts-coil-background.ts'
import { writeFit } from './facts-fit.ts'
import { writeCounts } from './facts-sizes.ts'
import { placeId } from './place-id.ts'

/** Standard acceleration of gravity, m/s². */
const GRAVITY = 9.80665
/** Time a fast flap takes to swing over, s (common practice, no source). */
const FLAP_S = 0.1

type MachineLimits = Pick<Machine, 'id' | 'label' | 'maxWidthMm' | 'maxHeightMm'>

/** Facts of one metal detector at one inspection point: opening, filling, food, pack and frequencies. */
export function factsForCoil(
  brief: Brief,
  pointIndex: number,
  machine: MachineLimits,
  assessment: CoilAssessment,
): FactSheet {
  const point = pointAt(brief, pointIndex)
  const write = new FactWriter(placeId({ point: pointIndex, equipment: machine.id }), brief)
  const at = (name: string) => calculationAt(assessment, name)
  write.fromMachine('machine.label', machine.label ?? machine.id, machine.id, machine.label !== undefined)
  write.computed('coil.arrangement', assessment.arrangement)
  writeOpening(write, assessment)
  if (assessment.arrangement === 'tunnel') {
    const { heightMm, widthMm } = assessment.opening
    writeFit(write, {
      refusals: assessment.refusals,
      widthMm: point.widthMm * point.lanes,
      heightMm: point.heightMm,
      widestMm: Math.min(widthMm, machine.maxWidthMm ?? Infinity),
      highestMm: Math.min(heightMm, machine.maxHeightMm ?? Infinity),
      limit: (id, valueMm) =>
        write.computed(id, valueMm, at(id === 'fit.widthAllowedMm' ? 'opening.width' : 'opening.height')),
    })
  }
  writeFilling(write, assessment)
  const { metalFreeZone, packGap, findings } = assessment
  write.computed('coil.metalFreeFixedMm', metalFreeZone.fixedMm, at('surroundings.fixed'))
  write.computed('coil.metalFreeMovingMm', metalFreeZone.movingMm, at('surroundings.moving'))
  write.computed('coil.answering', findings.filter(({ answers }) => answers).length)
  const silent = findings.filter(({ answers }) => !answers)
  write.computed('coil.silent', silent.length)
  const nameOf = (contaminant: number) => {
    const { material } = brief.contaminants[contaminant]!
    return materials.get(material)?.label ?? material
  }
  write.computed('coil.silentNames', [...new Set(silent.map((one) => nameOf(one.contaminant)))].join(', '))
  write.computed('coil.sectionTakenFull', assessment.filling.basis === 'full, throughput not known')
  write.computed('coil.streamPct', 100 * assessment.streamShare)
  if (assessment.family === 'static-field') return write.sheet()
  write.computed('coil.packGapNeededMm', packGap.neededMm)
  if (point.stage === 'packed') write.computed('coil.packGapGivenMm', packGap.givenMm)
  writeBackground(write, assessment, at)
  writeFitting(write, assessment)
  writeCounts(write, brief, findings)
  writeCleanRun(write, brief, pointIndex, machine.id)
  return write.sheet()
}

function writeOpening(write: FactWriter, assessment: CoilAssessment): void {
  const { heightMm, widthMm, origin } = assessment.opening
  const height = calculationAt(assessment, 'opening.height')
  const width = calculationAt(assessment, 'opening.width')
  write.computed('coil.openingHeightMm', heightMm, height)
  write.computed('coil.openingWidthMm', widthMm, width)
  write.computed('coil.openingFrom', origin)
  const sides = ['coil.openingHeightMm', 'coil.openingWidthMm']
  write.derived(
    'coil.openingShortMm',
    Math.min(heightMm, widthMm),
    'h',
    'the smaller of height and width',
    sides,
  )
  const ratio = Math.max(heightMm, widthMm) / Math.min(heightMm, widthMm)
  write.derived('coil.openingWidthOverHeight', ratio, 'w/h', 'longer side ÷ shorter side', sides)
}

/** How full the opening is; a stream that asks for more than the throat comes out above 100 %. */
function writeFilling(write: FactWriter, assessment: CoilAssessment): void {
  const { filling, refusals, arrangement } = assessment
  const overfull = refusals.find(({ id }) => id === 'over-full')
  write.computed('coil.heightFillPct', 100 * filling.heightShare)
  write.computed('coil.areaFillPct', overfull?.given ?? 100 * filling.areaShare)
  write.computed('coil.speedMPerS', filling.speedMPerS)
  if (arrangement !== 'free-fall') return
  write.derived(
    'coil.fallInTenthMm',
    1000 * (filling.speedMPerS * FLAP_S + (GRAVITY * FLAP_S ** 2) / 2),
    's',
    'speed × 0.1 s + ½ × 9.81 m/s² × (0.1 s)²',
    ['coil.speedMPerS'],
  )
}

/** What the smallest usual opening for the pack would gain, where the one in use is larger. */
function writeFitting(write: FactWriter, { fitting, findings }: CoilAssessment): void {
  if (!fitting) {
    write.computed('coil.oversizeGainPct', 0)
    return
  }
  write.computed('coil.fittingHeightMm', fitting.opening.heightMm)
  write.computed('coil.fittingWidthMm', fitting.opening.widthMm)
  const gains = fitting.expectedMm.map((size, i) => {
    const now = findings[i]?.expectedMm ?? null
    if (size === null) return 0
    return now === null ? 100 : 100 * (1 - size / now)
  })
  write.computed('coil.oversizeGainPct', Math.max(0, ...gains))
}

/** Calculation of the physics whose id ends with this name; none where it made none. */
function calculationAt(assessment: CoilAssessment, name: string): string | undefined {
  return assessment.calculations.find(({ id }) => id.endsWith(`.${name}`))?.id
}
