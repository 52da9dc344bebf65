import type { CoilMachine, Point } from '../contract/index.ts'
import { materials } from '../reference/materials.ts'
import type { CoilRefusal, Filling } from './assessment.ts'
import { type FoodConductivity, foodConductivity } from './food/food-conductivity.ts'
import { ironPowderSusceptibility } from './food/iron-powder.ts'
import { type ProductBlock, sensedLengthM } from './food/product-block.ts'
import { extentAt, refusalsAt } from './opening/extent.ts'
import {
  type Arrangement,
  arrangementOf,
  chooseOpening,
  fieldOpening,
  type Opening,
} from './opening/opening.ts'
import { fallSpeedMPerS, streamAreaMm2 } from './opening/stream.ts'
import { conductingParts } from './pack/packaging.ts'
import { productTerm, type Scene, wetness } from './scene.ts'

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
  /** 12 mm, or what the bore of pipe or throat lets through. */
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
      flow: arrangement === 'pipe' ? 'stream' : 'block',
      read: point.productSignal,
      wetness: susceptibility > 0 ? 1 : wetness(sPerM),
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
    refusals: refusalsAt(machine, point, arrangement, opening, extent.streamShare),
    filling: extent.filling,
    conductivity,
    susceptibility,
    streamShare: extent.streamShare,
    limitMm: arrangement === 'tunnel' ? LARGEST_SIZE_MM : Math.min(extent.boreMm, LARGEST_SIZE_MM),
    sceneAt,
  }
}
