import {
  BASES,
  CONSUMERS,
  MARKETS,
  OUTLINES,
  PLACEMENTS,
  SHAPES,
  STAGES,
  STRUCTURES,
} from '../contract/index.ts'
import type { FactDefinition, FactScope } from './fact-definition.ts'
import { NATURAL_PARTS } from './natural-parts.ts'
import { PACK_KINDS } from './pack-kind.ts'

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
  ['brief.readyToEat', 'ready to eat', '', 'boolean'],
  ['brief.pointCount', 'inspection points', '', 'number'],
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
  ['food.label', 'food', '', 'string'],
  ['food.structure', 'structure', '', 'string', STRUCTURES],
  ['food.grainMm', 'grain size', 'mm', 'number'],
  ['food.packing', 'packing fraction', '', 'number'],
  ['food.unevennessMm', 'unevenness of the food', 'mm', 'number'],
  ['food.voidFree', 'free of voids', '', 'boolean'],
  ['food.temperatureC', 'temperature', '°C', 'number'],
  ['food.densityGPerCm3', 'density of the solid food', 'g/cm³', 'number'],
  ['pack.kind', 'kind of pack', '', 'string', PACK_KINDS],
  ['pack.rigid', 'rigid container', '', 'boolean'],
  ['pack.foilMicrometres', 'thickest aluminium foil, one layer', 'µm', 'number'],
  ['pack.metallisedFilm', 'metallised film', '', 'boolean'],
  ['pack.heightOverWidth', 'height ÷ width', '', 'number'],
  ['pack.shortSideMm', 'shorter side seen from above', 'mm', 'number'],
  ['pack.insertCount', 'inserts in the pack', '', 'number'],
  ['pack.inserts', 'names of the inserts', '', 'string'],
  ['flow.pitchMm', 'spacing of packs in a lane', 'mm', 'number'],
  ['flow.gapMm', 'gap between packs', 'mm', 'number'],
  ['flow.falseRejectsPerDay', 'good packs rejected a day', 'per day', 'number'],
]

const CONTAMINANT: readonly Row[] = [
  ['contaminant.label', 'contaminant', '', 'string'],
  ['contaminant.kind', 'kind of material', '', 'string'],
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
