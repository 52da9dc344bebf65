import type { Brief, XrayMachine } from '../../contract/index.ts'
import type { XrayAssessment } from '../../xray/assessment.ts'
import { MACHINE_DEFAULTS } from '../../xray/beam/exposure.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { pointAt } from './facts.ts'
import { writeCleanRun } from './facts-clean-run.ts'
import { writeFit } from './facts-fit.ts'
import { writeCounts } from './facts-sizes.ts'
import { placeId } from './place-id.ts'

/** Facts of one x-ray machine at one inspection point. */
export function factsForXray(
  brief: Brief,
  pointIndex: number,
  machine: XrayMachine,
  assessment: XrayAssessment,
): FactSheet {
  const write = new FactWriter(placeId({ point: pointIndex, equipment: machine.id }), brief)
  const from = <T extends string | number>(id: string, given: T | undefined, usual: T) =>
    write.fromMachine(id, given ?? usual, machine.id, given !== undefined)
  from('machine.label', machine.label, machine.id)
  from('machine.beam', machine.beam, MACHINE_DEFAULTS.beam)
  from('machine.views', machine.views, MACHINE_DEFAULTS.views)
  if (machine.maxLinesPerSecond !== undefined)
    write.fromMachine('machine.maxLinesPerSecond', machine.maxLinesPerSecond, machine.id)
  write.computed('machine.channels', assessment.channels)
  write.computed('machine.ideal', assessment.ideal)
  writeFitAndFan(write, brief, pointIndex, machine, assessment)
  const at = (name: string) => calculationAt(assessment, name)
  write.computed('setting.kV', assessment.setting.kV, at('kV'))
  write.computed('setting.mA', assessment.setting.mA, at('mA'))
  write.computed('beam.pathMm', assessment.pathMm)
  write.derived('beam.solidPathMm', assessment.solidPathMm, 'φ·L', 'food in the beam × fill fraction', [
    'beam.pathMm',
    'food.packing',
  ])
  writeSignal(write, assessment)
  write.computed('beam.objectPixelMm', assessment.objectPixelMm, at('object-pixel'))
  writeLines(write, brief, pointIndex, machine)
  writeCounts(write, brief, assessment.findings)
  writeCleanRun(write, brief, pointIndex, machine.id)
  return write.sheet()
}

/** Width and height, and how far the fan opens for them. */
function writeFitAndFan(
  write: FactWriter,
  brief: Brief,
  pointIndex: number,
  machine: XrayMachine,
  assessment: XrayAssessment,
): void {
  const point = pointAt(brief, pointIndex)
  const { refusals } = assessment
  writeFit(write, {
    refusals,
    widthMm: point.widthMm * point.lanes,
    heightMm: point.heightMm,
    widestMm: machine.maxWidthMm,
    highestMm: machine.maxHeightMm,
    limit: (id, valueMm) => write.fromMachine(id, valueMm, machine.id),
  })
  write.computed(
    'fit.fanRefused',
    refusals.some(({ id }) => id === 'fan-too-wide'),
  )
  const sourceToDetectorMm = machine.sourceToDetectorMm ?? MACHINE_DEFAULTS.sourceToDetectorMm
  const magnification = machine.magnification ?? MACHINE_DEFAULTS.magnification
  const beam = machine.beam ?? MACHINE_DEFAULTS.beam
  const sourceToFoodMm = sourceToDetectorMm / magnification
  const acrossMm = beam === 'side' ? point.heightMm : point.widthMm * point.lanes
  write.derived(
    'fit.fanHalfAngleDeg',
    (180 / Math.PI) * Math.atan(acrossMm / 2 / sourceToFoodMm),
    'α',
    'arc tangent of half the extent across the fan ÷ (source to detector ÷ magnification)',
    [beam === 'side' ? 'point.heightMm' : 'fit.widthNeededMm'],
  )
}

/** Lines a second that keep the pixel square along the belt. */
function writeLines(write: FactWriter, brief: Brief, pointIndex: number, machine: XrayMachine): void {
  const pixelMm = machine.pixelMm / (machine.magnification ?? MACHINE_DEFAULTS.magnification)
  const linesPerSecond = (pointAt(brief, pointIndex).speedMPerMin * 1000) / 60 / pixelMm
  write.derived(
    'beam.linesNeededPerSecond',
    linesPerSecond,
    'n',
    'belt speed ÷ (pixel size ÷ magnification)',
    ['point.speedMPerMin'],
  )
}

/** What food and packaging leave of the open beam, in the channel that loses most. */
function writeSignal(write: FactWriter, assessment: XrayAssessment): void {
  const { first, last } = assessment.transmission
  const inputs = ['photons', 'food-mu0'].flatMap((name) => calculationAt(assessment, name) ?? [])
  const formula = 'signal behind food and pack ÷ signal with an empty belt, in the channel that loses most'
  write.derived('beam.signalLeftPct', 100 * Math.min(first, last), 'S/S₀', formula, inputs)
  write.derived(
    'beam.packagingPassesPct',
    100 * assessment.packagingTransmission,
    'S_p/S₀',
    'signal behind the packaging alone ÷ signal with an empty belt, first channel',
    inputs.slice(0, 1),
  )
}

/** Calculation of the physics with this name as the last part of its id; none where it made none. */
function calculationAt(assessment: XrayAssessment, name: string): string | undefined {
  return assessment.calculations.find(({ id }) => id.endsWith(`.${name}`))?.id
}
