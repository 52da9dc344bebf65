import type { Brief, Family, Point } from '../../contract/index.ts'
import { lineUp } from '../assess/line-up.ts'
import { type FactSheet, FactWriter } from './fact-sheet.ts'
import { writeEntering } from './facts-entering.ts'
import { writeFlow, writeHold } from './facts-flow.ts'
import { writeFood } from './facts-food.ts'
import { writeMass } from './facts-mass.ts'
import { writePack } from './facts-pack.ts'
import { countMetals } from './kinds/contaminant-metal.ts'
import { type Materials, packKind } from './kinds/pack-kind.ts'
import { bringsMetal } from './kinds/pack-metal.ts'
import { lawClass, saysOrganic } from './kinds/regulated-foods.ts'
import { placeId } from './place-id.ts'

export { factsForContaminant } from './facts-contaminant.ts'

const isMagnetic = (family: Family) => ['coil', 'static-field', 'magnet'].includes(family)
const isDetector = (family: Family) => ['xray', 'coil', 'static-field'].includes(family)

/** Facts that hold for the whole brief. */
export function factsForBrief(brief: Brief, materials: Materials): FactSheet {
  const write = new FactWriter(placeId({}), brief)
  const { contaminants, points, labelClaims } = brief
  write.fromBrief('brief.market', brief.market, 'market')
  write.fromBrief('brief.consumer', brief.consumer, 'consumer')
  write.fromBrief('brief.readyToEat', brief.readyToEat, 'readyToEat')
  write.fromBrief('brief.pointCount', points.length, 'points')
  write.computed('brief.openPoints', points.filter((point) => !bringsMetal(point, materials)).length)
  const count = countMetals(contaminants)
  write.computed('brief.metals', count.metals)
  write.computed('brief.ferrousMetals', count.ferrous)
  write.computed('brief.plainMetals', count.plain)
  write.computed('brief.austeniticMetals', count.austenitic)
  write.computed('brief.nonMetals', count.others)
  write.computed('brief.wires', contaminants.filter(({ shape }) => shape === 'wire').length)
  write.computed('brief.sizesAsked', contaminants.filter(({ mustFindMm }) => mustFindMm !== null).length)
  const last = points.at(-1)!
  write.fromBrief('brief.structure', points[0]!.product.structure, 'product.structure')
  write.computed(
    'brief.packedInGlass',
    points.some((point) => packKind(point, materials) === 'jar'),
  )
  write.fromBrief(
    'brief.boneIn',
    last.product.boneIn,
    `points.${points.length - 1}.product.boneIn`,
    'product.boneIn',
  )
  const pumped = points.filter(({ stage }) => stage === 'pumped').length
  write.computed('brief.pumpedPoints', pumped)
  write.computed('brief.movingPoints', points.length - pumped)
  write.fromBrief('brief.ironMgPerKg', last.product.ironMgPerKg, 'product.ironMgPerKg')
  const asked = contaminants.filter(({ basis, mustFindMm }) => basis === 'customer' && mustFindMm !== null)
  write.computed('brief.customerSizes', asked.length)
  const families = points.flatMap((point) => lineUp(brief, point).map(({ machine }) => machine.family))
  write.computed('brief.detectors', families.filter((family) => isDetector(family)).length)
  write.computed('brief.magneticMachines', families.filter((family) => isMagnetic(family)).length)
  write.computed('brief.xrayMachines', families.filter((family) => family === 'xray').length)
  const foodClass = lawClass(brief)
  write.computed('brief.foodClass', foodClass)
  write.computed('brief.foodClassKnown', foodClass !== null)
  write.computed('brief.saysOrganic', saysOrganic(labelClaims))
  writeSteps(write, brief)
  return write.sheet()
}

/** Facts of the steps of the flow; none where the brief tells of no flow. */
function writeSteps(write: FactWriter, brief: Brief): void {
  const steps = brief.given.flow ?? []
  if (steps.length === 0) return
  const open = steps.filter((step) => (step.entersHere ?? []).length > 0 && !step.upstreamControl)
  write.computed('brief.reworkSteps', steps.filter((step) => step.rework === true).length)
  write.computed('brief.openSteps', open.length)
  write.computed('brief.openStepNames', open.map(({ step }) => step).join(', '))
}

/** Facts of one inspection point: its food, its pack and its flow. */
export function factsForPoint(brief: Brief, index: number, materials: Materials): FactSheet {
  const point = pointAt(brief, index)
  const write = new FactWriter(placeId({ point: index }), brief)
  const from = (id: string, key: keyof Point) =>
    write.fromBrief(id, point[key] as string | number | null, `points.${index}.${key}`)
  from('point.name', 'name')
  from('point.stage', 'stage')
  from('point.heightMm', 'heightMm')
  from('point.filledMm', 'filledMm')
  from('point.widthMm', 'widthMm')
  from('point.lengthMm', 'lengthMm')
  from('point.outline', 'outline')
  from('point.speedMPerMin', 'speedMPerMin')
  from('point.kgPerHour', 'kgPerHour')
  from('point.lanes', 'lanes')
  from('point.hoursPerDay', 'hoursPerDay')
  from('point.checkIntervalMin', 'checkIntervalMin')
  write.computed('point.checkIntervalGiven', point.checkIntervalMin !== null)
  if (point.stage === 'free-fall') write.computed('point.fallHeightGiven', point.fallHeightMm !== null)
  writeFood(write, point.product, index, materials)
  if (point.stage === 'packed') {
    from('point.massG', 'massG')
    writeMass(write, point)
    from('point.packsPerMin', 'packsPerMin')
    writeFlow(write, point)
  } else writeHold(write, point)
  writePack(write, point, materials)
  writeEntering(write, brief, index, materials)
  return write.sheet()
}

export function pointAt(brief: Brief, index: number): Point {
  const point = brief.points[index]
  if (!point) throw new Error(`no inspection point ${index}; the brief has 0 to ${brief.points.length - 1}`)
  return point
}
