import type { Brief, Calculation, XrayMachine } from '../contract/index.ts'
import type { XrayAssessment, XrayFinding } from '../xray/assessment.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { pointAt } from './facts.ts'

/** Facts of one x-ray machine at one inspection point. */
export function factsForXray(
  brief: Brief,
  pointIndex: number,
  machine: XrayMachine,
  assessment: XrayAssessment,
): FactSheet {
  const write = new FactWriter(`point ${pointIndex}, ${machine.id}`, brief)
  const from = (id: string, value: string | number | boolean) => write.fromMachine(id, value, machine.id)
  from('machine.label', machine.label ?? machine.id)
  from('machine.beam', machine.beam ?? 'down')
  from('machine.views', machine.views ?? 1)
  if (machine.maxLinesPerSecond !== undefined) from('machine.maxLinesPerSecond', machine.maxLinesPerSecond)
  write.computed('machine.channels', assessment.channels)
  write.computed('machine.ideal', assessment.ideal)
  writeFit(write, brief, pointIndex, machine, assessment)
  const at = (name: string) => calculationAt(assessment, name)
  write.computed('setting.kV', assessment.setting.kV, at('kV'))
  write.computed('setting.mA', assessment.setting.mA, at('mA'))
  write.computed('beam.pathMm', assessment.pathMm)
  write.derived('beam.solidPathMm', assessment.solidPathMm, 'φ·L', 'food in the beam × packing fraction', [
    'beam.pathMm',
    'food.packingPct',
  ])
  writeSignal(write, assessment)
  write.computed('beam.objectPixelMm', assessment.objectPixelMm, at('object-pixel'))
  writeLines(write, brief, pointIndex, machine)
  writeCounts(write, brief, assessment)
  return write.sheet()
}

/** Facts of one contaminant in front of one x-ray machine; none where the physics found nothing to compute. */
export function factsForXrayFinding(
  brief: Brief,
  pointIndex: number,
  machine: XrayMachine,
  assessment: XrayAssessment,
  contaminant: number,
): FactSheet {
  const write = new FactWriter(`point ${pointIndex}, ${machine.id}, contaminant ${contaminant}`, brief)
  const finding = assessment.findings.find((one) => one.contaminant === contaminant)
  if (finding) writeFinding(write, finding, assessment.calculations)
  return write.sheet()
}

function writeFinding(write: FactWriter, finding: XrayFinding, calculations: readonly Calculation[]): void {
  const base = finding.calculation.slice(0, finding.calculation.lastIndexOf('.') + 1)
  const say = (id: string, value: string | number | boolean, name = 'expected') => {
    const calculation = calculations.find((one) => one.id === base + name)?.id ?? finding.calculation
    write.computed(id, value, calculation)
  }
  say('finding.possible', finding.bestMm !== null, 'best')
  say('finding.looksLikeVoid', finding.looksLikeVoid, 'contrast')
  say('finding.contrast', finding.contrast, 'contrast')
  say('finding.limitMm', finding.limitMm)
  if (finding.bestMm !== null) say('finding.bestMm', finding.bestMm, 'best')
  if (finding.expectedMm !== null) say('finding.expectedMm', finding.expectedMm)
  if (finding.cautiousMm !== null) say('finding.cautiousMm', finding.cautiousMm, 'cautious')
  if (finding.expectedMm !== null && finding.cautiousMm !== null)
    say('finding.spread', finding.cautiousMm / finding.expectedMm, 'cautious')
  say('finding.widest', finding.widest, 'ranges')
  say('finding.photonPct', 100 * finding.noise.photon, 'detectability')
  say('finding.electronicsPct', 100 * finding.noise.electronics, 'detectability')
  say('finding.grainPct', 100 * finding.noise.grain, 'detectability')
  say('finding.unevennessPct', 100 * finding.noise.unevenness, 'detectability')
  say('finding.packagingPct', 100 * finding.noise.packaging, 'detectability')
  const weak = finding.zones.filter((zone) => zone.state !== 'findable')
  say('finding.blindZones', weak.filter((zone) => zone.state === 'blind').length)
  say('finding.weakZones', weak.length)
  say('finding.weakZoneNames', weak.map((zone) => `${zone.name} (${zone.state})`).join(', '))
}

/** What the pack needs and the machine takes; a refusal of the physics always shows up here. */
function writeFit(
  write: FactWriter,
  brief: Brief,
  pointIndex: number,
  machine: XrayMachine,
  assessment: XrayAssessment,
): void {
  const point = pointAt(brief, pointIndex)
  const refused = (id: string) => assessment.refusals.find((refusal) => refusal.id === id)
  const wide = refused('too-wide')
  const high = refused('too-high')
  write.derived('fit.widthNeededMm', wide?.given ?? point.widthMm * point.lanes, 'W', 'width × lanes', [
    'point.widthMm',
    'point.lanes',
  ])
  write.derived('fit.heightNeededMm', high?.given ?? point.heightMm, 'H', 'height', ['point.heightMm'])
  const widest = wide?.allowed ?? machine.maxWidthMm
  const highest = high?.allowed ?? machine.maxHeightMm
  if (widest !== undefined) write.fromMachine('fit.widthAllowedMm', widest, machine.id)
  if (highest !== undefined) write.fromMachine('fit.heightAllowedMm', highest, machine.id)
  write.computed('fit.fanRefused', refused('fan-too-wide') !== undefined)
  if (machine.sourceToDetectorMm === undefined || machine.magnification === undefined) return
  const sourceToFoodMm = machine.sourceToDetectorMm / machine.magnification
  const acrossMm = machine.beam === 'side' ? point.heightMm : point.widthMm * point.lanes
  write.derived(
    'fit.fanHalfAngleDeg',
    (180 / Math.PI) * Math.atan(acrossMm / 2 / sourceToFoodMm),
    'α',
    'arc tangent of half the extent across the fan ÷ (source to detector ÷ magnification)',
    [machine.beam === 'side' ? 'point.heightMm' : 'fit.widthNeededMm'],
  )
}

/** Lines a second that keep the pixel square along the belt. */
function writeLines(write: FactWriter, brief: Brief, pointIndex: number, machine: XrayMachine): void {
  const pixelMm = machine.pixelMm / (machine.magnification ?? 1)
  const linesPerSecond = (pointAt(brief, pointIndex).speedMPerMin * 1000) / 60 / pixelMm
  write.derived(
    'beam.linesNeededPerSecond',
    linesPerSecond,
    'n',
    'belt speed ÷ (pixel size ÷ magnification)',
    ['point.speedMPerMin'],
  )
}

function writeCounts(write: FactWriter, brief: Brief, assessment: XrayAssessment): void {
  let unmet = 0
  let close = 0
  for (const finding of assessment.findings) {
    const mustFindMm = brief.contaminants[finding.contaminant]?.mustFindMm ?? null
    if (mustFindMm === null) continue
    if (finding.expectedMm === null || finding.expectedMm > mustFindMm) unmet += 1
    else if (finding.cautiousMm === null || finding.cautiousMm > mustFindMm) close += 1
  }
  write.computed('findings.unmet', unmet)
  write.computed('findings.close', close)
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
