import type { Brief, Point, Product } from '../contract/index.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { isHardOrSharp, naturalPart, saysRemoved } from './natural-parts.ts'
import { isFoil, isMetallisedFilm, isRigid, type Materials, packKind } from './pack-kind.ts'

/** Facts that hold for the whole brief. */
export function factsForBrief(brief: Brief): FactSheet {
  const write = new FactWriter('brief', brief)
  write.fromBrief('brief.market', brief.market, 'market')
  write.fromBrief('brief.consumer', brief.consumer, 'consumer')
  write.fromBrief('brief.readyToEat', brief.readyToEat, 'readyToEat')
  write.fromBrief('brief.pointCount', brief.points.length, 'points')
  return write.sheet()
}

/** Facts of one inspection point: its food, its pack and its flow. */
export function factsForPoint(brief: Brief, index: number, materials: Materials): FactSheet {
  const point = pointAt(brief, index)
  const write = new FactWriter(`point ${index}`, brief)
  const from = (id: string, key: keyof Point) =>
    write.fromBrief(id, point[key] as string | number | null, `points.${index}.${key}`)
  from('point.name', 'name')
  from('point.stage', 'stage')
  from('point.heightMm', 'heightMm')
  from('point.widthMm', 'widthMm')
  from('point.lengthMm', 'lengthMm')
  from('point.outline', 'outline')
  from('point.speedMPerMin', 'speedMPerMin')
  from('point.kgPerHour', 'kgPerHour')
  from('point.lanes', 'lanes')
  writeFood(write, point.product, index, materials)
  if (point.stage === 'packed') {
    from('point.massG', 'massG')
    from('point.packsPerMin', 'packsPerMin')
    writeFlow(write, point)
  }
  writePack(write, point, materials)
  return write.sheet()
}

/** Facts of one contaminant, before any machine looks at it. */
export function factsForContaminant(brief: Brief, index: number, materials: Materials): FactSheet {
  const contaminant = brief.contaminants[index]
  if (!contaminant)
    throw new Error(`no contaminant ${index}; the brief has 0 to ${brief.contaminants.length - 1}`)
  const material = materials.get(contaminant.material)
  const path = `contaminants.${index}`
  const write = new FactWriter(`contaminant ${index}`, brief)
  write.fromBrief('contaminant.label', material?.label ?? contaminant.material, `${path}.material`)
  write.fromBrief('contaminant.shape', contaminant.shape, `${path}.shape`)
  write.fromBrief('contaminant.placement', contaminant.placement, `${path}.placement`)
  if (contaminant.mustFindMm !== null)
    write.fromBrief('contaminant.mustFindMm', contaminant.mustFindMm, `${path}.mustFindMm`)
  write.fromBrief('contaminant.basis', contaminant.basis, `${path}.basis`)
  write.fromBrief('contaminant.severity', contaminant.severity, `${path}.severity`)
  write.computed('contaminant.kind', material?.kind ?? null)
  write.computed('contaminant.densityGPerCm3', material?.densityGPerCm3 ?? null)
  write.computed('contaminant.calciumPct', material ? 100 * (material.massFractions.Ca ?? 0) : null)
  write.computed('contaminant.hardOrSharp', material ? isHardOrSharp(material) : null)
  const part = naturalPart(brief.given.product.food, contaminant.material, material?.kind)
  write.computed('contaminant.naturalPart', part)
  write.computed('contaminant.labelSaysRemoved', part === null ? null : saysRemoved(part, brief.labelClaims))
  return write.sheet()
}

function writeFood(write: FactWriter, product: Product, index: number, materials: Materials): void {
  const from = (id: string, key: keyof Product, value = product[key]) =>
    write.fromBrief(
      id,
      value as string | number | boolean,
      `points.${index}.product.${key}`,
      `product.${key}`,
    )
  from('food.label', 'food', materials.get(product.food)?.label ?? product.food)
  from('food.structure', 'structure')
  if (product.grainMm > 0) from('food.grainMm', 'grainMm')
  from('food.packing', 'packing')
  from('food.unevennessMm', 'unevennessMm')
  from('food.voidFree', 'voidFree')
  from('food.temperatureC', 'temperatureC')
  from('food.densityGPerCm3', 'densityGPerCm3')
}

function writePack(write: FactWriter, point: Point, materials: Materials): void {
  const kind = packKind(point, materials)
  const foils = point.parts.filter((part) => isFoil(part, materials)).map((part) => 1000 * part.mm)
  write.computed('pack.kind', kind)
  write.computed('pack.rigid', isRigid(kind))
  write.computed('pack.foilMicrometres', Math.max(0, ...foils))
  write.computed(
    'pack.metallisedFilm',
    point.parts.some((part) => isMetallisedFilm(part, materials)),
  )
  write.derived('pack.heightOverWidth', point.heightMm / point.widthMm, 'h/w', 'height ÷ width', [
    'point.heightMm',
    'point.widthMm',
  ])
  const shortSide = Math.min(point.widthMm, point.lengthMm)
  write.derived('pack.shortSideMm', shortSide, 's', 'the smaller of width and length', [
    'point.widthMm',
    'point.lengthMm',
  ])
  write.computed('pack.insertCount', point.inserts.length)
  write.computed('pack.inserts', point.inserts.join(', '))
}

/** Spacing in a lane, the gap it leaves, and what the asked false-reject rate costs a day. */
function writeFlow(write: FactWriter, point: Point): void {
  const perLane = point.packsPerMin === null ? null : point.packsPerMin / point.lanes
  const pitchMm = perLane === null ? null : (1000 * point.speedMPerMin) / perLane
  write.derived('flow.pitchMm', pitchMm, 'p', 'belt speed × lanes ÷ packs per minute', [
    'point.speedMPerMin',
    'point.lanes',
    'point.packsPerMin',
  ])
  write.derived('flow.gapMm', pitchMm === null ? null : pitchMm - point.lengthMm, 'g', 'spacing − length', [
    'flow.pitchMm',
    'point.lengthMm',
  ])
  const perDay =
    point.packsPerMin === null ? null : point.falseRejectsPerPack * point.packsPerMin * 60 * point.hoursPerDay
  write.derived(
    'flow.falseRejectsPerDay',
    perDay,
    'R',
    'false rejects per pack × packs per minute × 60 × hours per day',
    ['point.packsPerMin'],
  )
}

export function pointAt(brief: Brief, index: number): Point {
  const point = brief.points[index]
  if (!point) throw new Error(`no inspection point ${index}; the brief has 0 to ${brief.points.length - 1}`)
  return point
}
