import type { Brief, XrayMachine } from '../contract/index.ts'
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
  write.computed('setting.kV', assessment.setting.kV, calculationFor(assessment, 'setting.kV'))
  write.computed('setting.mA', assessment.setting.mA, calculationFor(assessment, 'setting.mA'))
  write.computed('beam.pathMm', assessment.pathMm, calculationFor(assessment, 'beam.pathMm'))
  write.computed('beam.solidPathMm', assessment.solidPathMm, calculationFor(assessment, 'beam.solidPathMm'))
  const { first, last } = assessment.transmission
  write.computed(
    'beam.signalLeftPct',
    100 * Math.min(first, last),
    calculationFor(assessment, 'beam.signalLeftPct'),
  )
  write.computed(
    'beam.packagingPassesPct',
    100 * assessment.packagingTransmission,
    calculationFor(assessment, 'beam.packagingPassesPct'),
  )
  write.computed(
    'beam.objectPixelMm',
    assessment.objectPixelMm,
    calculationFor(assessment, 'beam.objectPixelMm'),
  )
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
  if (finding) writeFinding(write, finding)
  return write.sheet()
}

function writeFinding(write: FactWriter, finding: XrayFinding): void {
  const say = (id: string, value: string | number | boolean) => write.computed(id, value, finding.calculation)
  say('finding.possible', finding.bestMm !== null)
  say('finding.looksLikeVoid', finding.looksLikeVoid)
  say('finding.contrast', finding.contrast)
  say('finding.limitMm', finding.limitMm)
  if (finding.bestMm !== null) say('finding.bestMm', finding.bestMm)
  if (finding.expectedMm !== null) say('finding.expectedMm', finding.expectedMm)
  if (finding.cautiousMm !== null) say('finding.cautiousMm', finding.cautiousMm)
  if (finding.expectedMm !== null && finding.cautiousMm !== null)
    say('finding.spread', finding.cautiousMm / finding.expectedMm)
  say('finding.widest', finding.widest)
  say('finding.photonPct', 100 * finding.noise.photon)
  say('finding.electronicsPct', 100 * finding.noise.electronics)
  say('finding.grainPct', 100 * finding.noise.grain)
  say('finding.unevennessPct', 100 * finding.noise.unevenness)
  say('finding.packagingPct', 100 * finding.noise.packaging)
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
  write.computed('fit.widthNeededMm', wide?.given ?? point.widthMm)
  write.computed('fit.heightNeededMm', high?.given ?? point.heightMm)
  const widest = wide?.allowed ?? machine.maxWidthMm
  const highest = high?.allowed ?? machine.maxHeightMm
  if (widest !== undefined) write.fromMachine('fit.widthAllowedMm', widest, machine.id)
  if (highest !== undefined) write.fromMachine('fit.heightAllowedMm', highest, machine.id)
  write.computed('fit.fanRefused', refused('fan-too-wide') !== undefined)
  if (machine.sourceToDetectorMm === undefined || machine.magnification === undefined) return
  const sourceToFoodMm = machine.sourceToDetectorMm / machine.magnification
  const acrossMm = machine.beam === 'side' ? point.heightMm : point.widthMm
  write.derived(
    'fit.fanHalfAngleDeg',
    (180 / Math.PI) * Math.atan(acrossMm / 2 / sourceToFoodMm),
    'α',
    'arc tangent of half the extent across the fan ÷ (source to detector ÷ magnification)',
    [machine.beam === 'side' ? 'point.heightMm' : 'point.widthMm'],
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

/** Calculation of the physics that carries a fact's id as its own or as its last part; none if it has no such. */
function calculationFor(assessment: XrayAssessment, fact: string): string | undefined {
  return assessment.calculations.find(({ id }) => id === fact || id.endsWith(`/${fact}`))?.id
}
