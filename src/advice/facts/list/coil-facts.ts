import { type FactDefinition, type FactRow, factsOf } from './fact-definition.ts'

export const ARRANGEMENTS = ['tunnel', 'free-fall', 'pipe'] as const
export const OPENING_ORIGINS = ['machine', 'point', 'pack', 'pipe', 'flow'] as const
export const CONDUCTIVITY_STATES = ['entered', 'dry', 'thawed', 'partly-frozen', 'frozen'] as const
export const RESIDUAL_ORIGINS = ['as assumed for such food', 'as read on the line'] as const
export const ORIENTATIONS = ['along', 'across', 'none'] as const

/** Facts of any machine with an opening in a magnetic field. */
const OPENING: readonly FactRow[] = [
  ['coil.arrangement', 'arrangement', '', 'string', ARRANGEMENTS],
  ['coil.openingHeightMm', 'height of the opening', 'mm', 'number'],
  ['coil.openingWidthMm', 'width of the opening', 'mm', 'number'],
  ['coil.openingShortMm', 'shorter side of the opening', 'mm', 'number'],
  ['coil.openingWidthOverHeight', 'longer ÷ shorter side of the opening', '', 'number'],
  ['coil.openingFrom', 'where the opening comes from', '', 'string', OPENING_ORIGINS],
  ['coil.heightFillPct', 'height of the food in the opening', '%', 'number'],
  ['coil.areaFillPct', 'section of the food in the opening', '%', 'number'],
  ['coil.speedMPerS', 'speed at the detector', 'm/s', 'number'],
  ['coil.fallInTenthMm', 'fall within a tenth of a second', 'mm', 'number'],
  ['coil.metalFreeFixedMm', 'free of fixed metal before and behind', 'mm', 'number'],
  ['coil.metalFreeMovingMm', 'free of moving metal before and behind', 'mm', 'number'],
  ['coil.answering', 'contaminants it reacts to', '', 'number'],
  ['coil.silent', 'contaminants it does not react to', '', 'number'],
  ['coil.silentNames', 'names of those it does not react to', '', 'string'],
  ['coil.sectionTakenFull', 'section taken as full, throughput not given', '', 'boolean'],
  ['coil.streamPct', 'section the throughput would need', '%', 'number'],
]

/** Facts of a balanced coil: food, pack and frequencies. */
const COIL: readonly FactRow[] = [
  ['coil.packGapNeededMm', 'gap between packs the coil wants', 'mm', 'number'],
  ['coil.packGapGivenMm', 'gap between packs there is', 'mm', 'number'],
  ['coil.conductivitySPerM', 'conductivity of the food', 'S/m', 'number'],
  ['coil.conductivityState', 'how the conductivity came about', '', 'string', CONDUCTIVITY_STATES],
  ['coil.conductivityRange', 'highest ÷ lowest conductivity it may have', '', 'number'],
  ['coil.productSignal', 'the food itself gives a signal', '', 'boolean'],
  ['coil.residualPct', 'what is left of the food’s signal once learned', '%', 'number'],
  ['coil.residualDeg', 'how far the phase of the food wanders', 'degrees', 'number'],
  ['coil.residualFrom', 'how these two came about', '', 'string', RESIDUAL_ORIGINS],
  ['coil.productOverSteelBall', 'signal of the food, a 1 mm steel ball = 1', '', 'number'],
  ['coil.layersOverSteelBall', 'signal of the pack, a 1 mm steel ball = 1', '', 'number'],
  ['coil.insidePct', 'field that enters the pack and comes out again', '%', 'number'],
  ['coil.foilLayers', 'conducting parts of the pack that are no film', '', 'number'],
  ['coil.filmLayers', 'metallised films of the pack', '', 'number'],
  ['coil.sheetSiemens', 'conductance of the best conducting part of the pack', 'S', 'number'],
  ['coil.frequencyCount', 'frequencies in use together', '', 'number'],
  ['coil.frequencies', 'frequencies in use', '', 'string'],
  ['coil.lowestKHz', 'lowest frequency in use', 'kHz', 'number'],
  ['coil.highestKHz', 'highest frequency in use', 'kHz', 'number'],
  ['coil.fittingHeightMm', 'height of the smallest usual opening for the pack', 'mm', 'number'],
  ['coil.fittingWidthMm', 'width of the smallest usual opening for the pack', 'mm', 'number'],
  ['coil.oversizeGainPct', 'how much smaller a size gets in that opening', '%', 'number'],
]

const ANSWER: readonly FactRow[] = [['finding.answers', 'reacts to the material at all', '', 'boolean']]

const FINDING: readonly FactRow[] = [
  ['finding.weakOrientation', 'weak way for the piece to lie to the travel', '', 'string', ORIENTATIONS],
  ['finding.orientationRatio', 'size in the weak ÷ in the strong orientation', '', 'number'],
  ['finding.missedAgain', 'ranges of sizes missed above a found one', '', 'number'],
  ['finding.missedFromMm', 'size above which pieces are missed again', 'mm', 'number'],
  ['finding.frequencyUnsuitable', 'frequency unsuitable for iron of this size', '', 'boolean'],
  ['finding.costOfFood', 'expected size ÷ size in an empty opening', '', 'number'],
  ['finding.atFloor', 'held up by the smallest size the trade trusts', '', 'boolean'],
]

/** Facts of one metal detector at one point, and of one contaminant in front of it. */
export const COIL_FACTS: readonly FactDefinition[] = [
  ...factsOf('option', OPENING, ['coil', 'static-field']),
  ...factsOf('option', COIL, ['coil']),
  ...factsOf('finding', ANSWER, ['coil', 'static-field']),
  ...factsOf('finding', FINDING, ['coil']),
]
