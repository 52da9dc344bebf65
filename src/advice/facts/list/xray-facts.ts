import { type FactDefinition, type FactRow, factsOf } from './fact-definition.ts'

const OPTION: readonly FactRow[] = [
  ['machine.channels', 'energy channels', '', 'number'],
  ['machine.ideal', 'idealised detector', '', 'boolean'],
  ['machine.views', 'views', '', 'number'],
  ['machine.maxLinesPerSecond', 'fastest line rate', 'lines/s', 'number'],
  ['fit.fanHalfAngleDeg', 'half angle of the fan needed', 'degrees', 'number'],
  ['fit.fanRefused', 'fan too wide for the source distance', '', 'boolean'],
  ['setting.kV', 'tube voltage', 'kV', 'number'],
  ['setting.mA', 'tube current', 'mA', 'number'],
  ['beam.pathMm', 'food in the beam', 'mm', 'number'],
  ['beam.solidPathMm', 'solid food in the beam', 'mm', 'number'],
  ['beam.signalLeftPct', 'signal left behind food and pack', '%', 'number'],
  ['beam.packagingPassesPct', 'signal the packaging lets through', '%', 'number'],
  ['beam.objectPixelMm', 'pixel size at the food', 'mm', 'number'],
  ['beam.linesNeededPerSecond', 'line rate for square pixels', 'lines/s', 'number'],
]

const FINDING: readonly FactRow[] = [
  ['finding.looksLikeVoid', 'looks like a void in the food', '', 'boolean'],
  ['finding.contrast', 'attenuation above the food it replaces, food = 1', '', 'number'],
  ['finding.photonPct', 'share of noise from counting photons', '%', 'number'],
  ['finding.electronicsPct', 'share of noise from electronics', '%', 'number'],
  ['finding.grainPct', 'share of noise from the grain pattern', '%', 'number'],
  ['finding.unevennessPct', 'share of noise from uneven food', '%', 'number'],
  ['finding.packagingPct', 'share of noise from the packaging', '%', 'number'],
  ['finding.mainNoise', 'noise that hides most', '', 'string'],
  ['finding.mainNoisePct', 'its share of the noise', '%', 'number'],
  ['finding.extrapolated', 'computed far from where practice was read', '', 'boolean'],
  ['finding.extrapolatedTo', 'what lies far from there', '', 'string'],
  ['finding.extrapolatedPct', 'what the size to promise is widened by', '%', 'number'],
  ['finding.settles', 'comes to rest at a place of the pack', '', 'boolean'],
  ['finding.settling', 'how it comes to rest', '', 'string'],
  ['finding.settlesAt', 'place where it comes to rest', '', 'string'],
  ['finding.settledBlind', 'it is hidden from the beam there', '', 'boolean'],
  ['finding.blindZones', 'blind zones of the pack', '', 'number'],
  ['finding.weakZones', 'degraded or blind zones of the pack', '', 'number'],
  ['finding.weakZoneNames', 'names of the degraded or blind zones', '', 'string'],
]

const BEAM: FactDefinition = {
  id: 'machine.beam',
  label: 'direction of the beam',
  unit: '',
  type: 'string',
  scope: 'option',
  values: ['down', 'side'],
  families: ['xray'],
}

/** Facts of one x-ray machine at one point, and of one contaminant in front of it. */
export const XRAY_FACTS: readonly FactDefinition[] = [
  BEAM,
  ...factsOf('option', OPTION, ['xray']),
  ...factsOf('finding', FINDING, ['xray']),
]
