import {
  BASES,
  CONSUMERS,
  MARKETS,
  OUTLINES,
  PLACEMENTS,
  SHAPES,
  STAGES,
  STRUCTURES,
} from '../../../contract/index.ts'
import { MAGNETISMS, TEST_PIECES } from '../kinds/contaminant-metal.ts'
import { NATURAL_PARTS } from '../kinds/natural-parts.ts'
import { PACK_KINDS } from '../kinds/pack-kind.ts'
import { FOIL_PLACES } from '../kinds/pack-metal.ts'
import { LAW_CLASSES } from '../kinds/regulated-foods.ts'
import type { FactDefinition, FactScope } from './fact-definition.ts'

type Row = readonly [
  id: string,
  label: string,
  unit: FactDefinition['unit'],
  type: FactDefinition['type'],
  values?: readonly string[],
]

const BRIEF: readonly Row[] = [
  ['brief.market', 'market', '', 'string', MARKETS],
  ['brief.consumer', 'consumer', '', 'string', CONSUMERS],
  ['brief.readyToEat', 'eaten as it is, or only heated', '', 'boolean'],
  ['brief.pointCount', 'inspection points', '', 'number'],
  ['brief.openPoints', 'inspection points without metal in the pack', '', 'number'],
  ['brief.metals', 'metals among the contaminants', '', 'number'],
  ['brief.ferrousMetals', 'metals a magnet holds among the contaminants', '', 'number'],
  ['brief.plainMetals', 'brass, aluminium and the like among the contaminants', '', 'number'],
  ['brief.austeniticMetals', 'austenitic steels among the contaminants', '', 'number'],
  ['brief.nonMetals', 'contaminants that are no metal', '', 'number'],
  ['brief.wires', 'wires among the contaminants', '', 'number'],
  ['brief.sizesAsked', 'contaminants with a size to find', '', 'number'],
  ['brief.reworkSteps', 'steps that send rework back', '', 'number'],
  ['brief.openSteps', 'steps where something enters without a control', '', 'number'],
  ['brief.openStepNames', 'names of those steps', '', 'string'],
  ['brief.foodClass', 'class of the food', '', 'string', LAW_CLASSES],
  ['brief.foodClassKnown', 'class of the food is known', '', 'boolean'],
  ['brief.detectors', 'machines compared that look for pieces', '', 'number'],
  ['brief.xrayMachines', 'x-ray machines compared', '', 'number'],
  ['brief.customerSizes', 'sizes asked by a customer', '', 'number'],
  ['brief.saysOrganic', 'label says organic', '', 'boolean'],
]

const POINT: readonly Row[] = [
  ['point.name', 'inspection point', '', 'string'],
  ['point.stage', 'stage', '', 'string', STAGES],
  ['point.heightMm', 'height of the food', 'mm', 'number'],
  ['point.widthMm', 'width across the belt', 'mm', 'number'],
  ['point.lengthMm', 'length along the belt', 'mm', 'number'],
  ['point.massG', 'mass of a pack', 'g', 'number'],
  ['point.outline', 'outline', '', 'string', OUTLINES],
  ['point.speedMPerMin', 'belt speed', 'm/min', 'number'],
  ['point.packsPerMin', 'packs per minute', 'per minute', 'number'],
  ['point.kgPerHour', 'throughput', 'kg/h', 'number'],
  ['point.lanes', 'lanes', '', 'number'],
  ['point.hoursPerDay', 'hours a day the line runs', 'h', 'number'],
  ['point.checkIntervalMin', 'time between checks', 'min', 'number'],
  ['point.checkIntervalGiven', 'time between checks was given', '', 'boolean'],
  ['point.fallHeightGiven', 'fall height was given', '', 'boolean'],
  ['food.label', 'food', '', 'string'],
  ['food.structure', 'structure', '', 'string', STRUCTURES],
  ['food.holdsPieces', 'stiff enough to hold a piece where it fell', '', 'boolean'],
  ['food.boneIn', 'bone belongs in the food', '', 'boolean'],
  ['food.grainMm', 'grain size', 'mm', 'number'],
  ['food.packing', 'packing fraction', '', 'number'],
  ['food.unevennessMm', 'unevenness of the food', 'mm', 'number'],
  ['food.voidFree', 'free of voids', '', 'boolean'],
  ['food.temperatureC', 'temperature', '°C', 'number'],
  ['food.waterPct', 'water in the food', '%', 'number'],
  ['food.saltPct', 'salt in the food', '%', 'number'],
  ['food.ironMgPerKg', 'iron powder added to the food', 'mg/kg', 'number'],
  ['food.densityGPerCm3', 'density of the solid food', 'g/cm³', 'number'],
  ['pack.kind', 'kind of pack', '', 'string', PACK_KINDS],
  ['pack.rigid', 'rigid container', '', 'boolean'],
  ['pack.foilMicrometres', 'thickest aluminium foil, one layer', 'µm', 'number'],
  ['pack.foilPlace', 'where the foil lies', '', 'string', FOIL_PLACES],
  ['pack.metallisedFilm', 'metallised film', '', 'boolean'],
  ['pack.bringsMetal', 'metal in the pack or its inserts', '', 'boolean'],
  ['pack.metalNames', 'metal parts and inserts', '', 'string'],
  ['pack.metalClosure', 'closure or lid of sheet metal', '', 'boolean'],
  ['pack.plainClosure', 'closure without metal', '', 'boolean'],
  ['pack.magneticParts', 'parts a magnet holds', '', 'number'],
  ['pack.heightOverWidth', 'height ÷ width', '', 'number'],
  ['pack.widthOverLength', 'width ÷ length', '', 'number'],
  ['pack.shortSideMm', 'shorter side seen from above', 'mm', 'number'],
  ['pack.insertCount', 'inserts in the pack', '', 'number'],
  ['pack.inserts', 'names of the inserts', '', 'string'],
  ['pack.metalInserts', 'metal inserts', '', 'number'],
  ['pack.ironInserts', 'iron inserts', '', 'number'],
  ['pack.plainInserts', 'inserts without metal', '', 'number'],
  ['pack.unclearInserts', 'inserts that may or may not hold metal', '', 'number'],
  ['flow.pitchMm', 'spacing of packs in a lane', 'mm', 'number'],
  ['flow.gapMm', 'gap between packs', 'mm', 'number'],
  ['flow.falseRejectsPerDay', 'good packs rejected a day', 'per day', 'number'],
  ['flow.holdPacks', 'packs held when a check fails', '', 'number'],
]

const CONTAMINANT: readonly Row[] = [
  ['contaminant.label', 'contaminant', '', 'string'],
  ['contaminant.material', 'id of the material', '', 'string'],
  ['contaminant.kind', 'kind of material', '', 'string'],
  ['contaminant.metal', 'metal or ferrite', '', 'boolean'],
  ['contaminant.magnetism', 'magnetism', '', 'string', MAGNETISMS],
  ['contaminant.testPiece', 'test piece that stands for it', '', 'string', TEST_PIECES],
  ['contaminant.brittle', 'glass or brittle plastic', '', 'boolean'],
  ['contaminant.bariumPct', 'barium in the contaminant', '%', 'number'],
  ['contaminant.lengthMm', 'length of the wire', 'mm', 'number'],
  ['contaminant.shape', 'shape', '', 'string', SHAPES],
  ['contaminant.placement', 'placement', '', 'string', PLACEMENTS],
  ['contaminant.mustFindMm', 'size to find', 'mm', 'number'],
  ['contaminant.basis', 'basis of the size', '', 'string', BASES],
  ['contaminant.severity', 'severity', '', 'number'],
  ['contaminant.densityGPerCm3', 'density of the contaminant', 'g/cm³', 'number'],
  ['contaminant.calciumPct', 'calcium in the contaminant', '%', 'number'],
  ['contaminant.hardOrSharp', 'hard or sharp', '', 'boolean'],
  ['contaminant.naturalPart', 'part the food naturally has', '', 'string', NATURAL_PARTS],
  ['contaminant.labelSaysRemoved', 'label says it was removed', '', 'boolean'],
]

const define = (scope: FactScope, rows: readonly Row[]): FactDefinition[] =>
  rows.map(([id, label, unit, type, values]) => ({
    id,
    label,
    unit,
    type,
    scope,
    ...(values ? { values } : {}),
  }))

/** Facts that come from the brief alone. */
export const BRIEF_FACTS: readonly FactDefinition[] = [
  ...define('brief', BRIEF),
  ...define('point', POINT),
  ...define('contaminant', CONTAMINANT),
]
