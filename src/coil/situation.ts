import type { CoilMachine, Point } from '../contract/index.ts'
import { materials } from '../reference/materials.ts'
import type { CoilRefusal, Filling } from './assessment.ts'
import { type FoodConductivity, foodConductivity } from './food-conductivity.ts'
import { ironPowderSusceptibility } from './iron-powder.ts'
import { type Arrangement, arrangementOf, chooseOpening, fieldOpening, type Opening } from './opening.ts'
import { conductingParts } from './packaging.ts'
import { type ProductBlock, sensedLengthM } from './product-block.ts'
import { productTerm, type Scene } from './scene.ts'
import { fallSpeedMPerS, squareOfStreamMm, streamAreaMm2 } from './stream.ts'

/** Sides of the square whose area is that of the circle of diameter 1. */
const SQUARE_OF_CIRCLE = Math.sqrt(Math.PI / 4)
/** No size is given above this, mm (limit of the model). */
const LARGEST_SIZE_MM = 12

/** Product, opening and pack of one machine at one point, before any piece of metal. */
export interface Situation {
  readonly arrangement: Arrangement
  readonly opening: Opening
  readonly refusals: readonly CoilRefusal[]
  readonly filling: Filling
  readonly conductivity: FoodConductivity
  readonly susceptibility: number
  /** Section the throughput asks for at this speed over the section there is; 0 for packs. */
  readonly streamShare: number
  /** min(half the food's height, 12 mm). */
  readonly limitMm: number
  /** The scene at a conductivity (S/m) in an opening. */
  readonly sceneAt: (sPerM: number, conductance: Scene['conductance'], opening?: Opening) => Scene
}

function conductivityAt(point: Point): FoodConductivity {
  const { product } = point
  const proximate = product.composition ?? materials.get(product.food)?.food?.proximate ?? null
  const heap = ['granular', 'powder', 'plates'].includes(product.structure)
  return foodConductivity({
    food: product.food,
    waterPct: proximate?.waterPct ?? null,
    ashPct: proximate?.ashPct ?? null,
    saltPct: product.saltPct,
    temperatureC: product.temperatureC,
    packing: heap ? product.packing : 1,
    enteredSPerM: product.conductivitySPerM,
  })
}

/** Extent of the food in the opening, mm, and how full the opening is. */
function extentAt(
  point: Point,
  arrangement: Arrangement,
  opening: Opening,
  stream: number | null,
  speed: number,
) {
  const shortMm = Math.min(opening.heightMm, opening.widthMm)
  const openingArea = opening.heightMm * opening.widthMm
  if (arrangement === 'tunnel') {
    const round = point.outline === 'cylinder' ? SQUARE_OF_CIRCLE : 1
    const standing = opening.heightMm <= opening.widthMm
    const filling: Filling = {
      heightShare: (standing ? point.heightMm : point.widthMm) / shortMm,
      areaShare: (point.lanes * point.widthMm * point.heightMm) / openingArea,
      basis: 'pack',
      speedMPerS: point.speedMPerMin / 60,
    }
    const widthMm = point.widthMm * round
    const block = standing
      ? { widthMm, heightMm: point.heightMm }
      : { widthMm: point.heightMm, heightMm: widthMm }
    return { ...block, lengthMm: point.lengthMm * round, boreMm: point.heightMm, filling, excess: 0 }
  }
  const boreMm = arrangement === 'pipe' && point.pipeDiameterMm !== null ? point.pipeDiameterMm : shortMm
  const boreArea = (Math.PI / 4) * boreMm ** 2
  const share = stream === null ? 1 : stream / boreArea
  const sideMm = squareOfStreamMm(Math.min(1, share) * boreArea)
  const filling: Filling = {
    heightShare: Math.min(1, sideMm / shortMm),
    areaShare: Math.min(1, share),
    basis: stream === null ? 'full, throughput not known' : 'flow',
    speedMPerS: speed,
  }
  return { widthMm: sideMm, heightMm: sideMm, lengthMm: point.lengthMm, boreMm, filling, excess: share }
}

function refusalsAt(
  machine: CoilMachine,
  point: Point,
  arrangement: Arrangement,
  opening: Opening,
  excess: number,
): CoilRefusal[] {
  const refusals: CoilRefusal[] = []
  const refuse = (id: CoilRefusal['id'], given: number, allowed: number, unit: string) => {
    if (given > allowed) refusals.push({ id, given, allowed, unit })
  }
  if (arrangement === 'tunnel') {
    refuse('too-high', point.heightMm, Math.min(opening.heightMm, machine.maxHeightMm ?? Infinity), 'mm')
    refuse(
      'too-wide',
      point.lanes * point.widthMm,
      Math.min(opening.widthMm, machine.maxWidthMm ?? Infinity),
      'mm',
    )
    return refusals
  }
  if (arrangement === 'pipe' && point.pipeDiameterMm !== null) {
    refuse('too-wide', point.pipeDiameterMm, Math.min(opening.heightMm, opening.widthMm), 'mm')
  }
  if (arrangement === 'free-fall') refuse('over-full', Math.round(excess * 100), 100, '% of the section')
  return refusals
}

/** Reads machine and point: opening, filling, conductivity, what cannot pass. */
export function situationOf(machine: CoilMachine, point: Point): Situation {
  const arrangement = arrangementOf(machine, point)
  const { product } = point
  const bulk = product.densityGPerCm3 * product.packing
  const speed =
    arrangement === 'free-fall' && point.fallHeightMm !== null
      ? fallSpeedMPerS(point.fallHeightMm)
      : point.speedMPerMin / 60
  const stream = point.kgPerHour === null ? null : streamAreaMm2(point.kgPerHour, bulk, speed)
  const opening = chooseOpening(machine, point, stream)
  const extent = extentAt(point, arrangement, opening, stream, speed)
  const conductivity = conductivityAt(point)
  const susceptibility = ironPowderSusceptibility(product.ironMgPerKg, bulk)
  const layers = arrangement === 'tunnel' ? conductingParts(point.parts) : []
  const sceneAt: Situation['sceneAt'] = (sPerM, conductance, used = opening) => {
    const field = fieldOpening(used)
    const term = productTerm(sPerM)
    const block: ProductBlock = {
      widthM: extent.widthMm / 1000,
      heightM: extent.heightMm / 1000,
      lengthM: extent.lengthMm / 1000,
      conductivitySPerM: term.sPerM,
      relativePermittivity: term.relativePermittivity,
      susceptibility,
      sideBySide: arrangement === 'tunnel' ? point.lanes : 1,
    }
    return {
      opening: field,
      block: term.sPerM > 0 || susceptibility > 0 ? block : null,
      pack: {
        widthM: point.widthMm / 1000,
        heightM: point.heightMm / 1000,
        sensedLengthM: sensedLengthM(point.lengthMm / 1000, field.heightM),
        openingHeightM: field.heightM,
      },
      layers,
      conductance,
    }
  }
  return {
    arrangement,
    opening,
    refusals: refusalsAt(machine, point, arrangement, opening, extent.excess),
    filling: extent.filling,
    conductivity,
    susceptibility,
    streamShare: extent.excess,
    limitMm: Math.min(extent.boreMm / 2, LARGEST_SIZE_MM),
    sceneAt,
  }
}
