import type { ProductSignal } from '../contract/index.ts'
import type { Complex } from '../numerics/complex.ts'
import { type ClutterSource, clutterCovariance, type Whitening, whitening } from './food/clutter.ts'
import { type ProductBlock, productResponse } from './food/product-block.ts'
import { type FieldOpening, noiseVariances } from './opening/noise.ts'
import type { ClosedLayer } from './pack/closed-wrap.ts'
import { insideFactor, layerResponse, type PackExtent, type PackLayer } from './pack/packaging.ts'
import type { CoilParameters, Residual } from './parameters.ts'

/** Everything in the opening but the piece of metal. */
export interface Scene {
  readonly opening: FieldOpening
  /** null: the food adds no signal (P = 0). */
  readonly block: ProductBlock | null
  /** Food that enters and leaves, or a stream that fills the pipe all along: the coil sees only how it varies. */
  readonly flow: 'block' | 'stream'
  /** What the machine leaves of this food, read on the line; null: as assumed for its flow. */
  readonly read: ProductSignal | null
  /** 0 for a food that spreads sizes as an empty opening does, 1 for a wet one. */
  readonly wetness: number
  readonly pack: PackExtent
  readonly layers: readonly PackLayer[]
  /** Sheet conductance of the layers: the central one, or the most it may be. */
  readonly conductance: 'central' | 'most'
}

/** Decade of σ, S/m, over which a food goes from dry to wet, and εr at its two ends (model). */
const DRY_TO_WET = { fromSPerM: 0.001, toSPerM: 0.01, fromPermittivity: 5, toPermittivity: 80 } as const
/** σ from which all of it counts, S/m: its signal is faded in from none at 0.001, so that no size jumps there. */
const WHOLE_FROM_S_PER_M = 0.002

const share = (value: number, from: number, to: number): number =>
  value <= from ? 0 : Math.min(1, Math.log(value / from) / Math.log(to / from))

/** How wet a food counts: 0 up to 0.001 S/m, 1 from 0.01 S/m, between them straight in ln σ. */
export const wetness = (conductivitySPerM: number): number =>
  share(conductivitySPerM, DRY_TO_WET.fromSPerM, DRY_TO_WET.toSPerM)

/** σ and εr that enter the product term: none up to 0.001 S/m; εr from 5 to 80 log-linearly over the decade above. */
export function productTerm(conductivitySPerM: number): { sPerM: number; relativePermittivity: number } {
  const { fromSPerM, fromPermittivity, toPermittivity } = DRY_TO_WET
  if (conductivitySPerM <= fromSPerM) return { sPerM: 0, relativePermittivity: 0 }
  const counted = share(conductivitySPerM, fromSPerM, WHOLE_FROM_S_PER_M)
  const permittivity = fromPermittivity * (toPermittivity / fromPermittivity) ** wetness(conductivitySPerM)
  return { sPerM: counted * conductivitySPerM, relativePermittivity: counted * permittivity }
}

/** The empty opening: no product, no pack. */
export const emptyScene = (scene: Scene): Scene => ({ ...scene, block: null, wetness: 0, layers: [] })

/** One frequency's answers of the pack's layers. */
export function layersAt(scene: Scene, frequencyHz: number): readonly ClosedLayer[] {
  return scene.layers.map((layer) =>
    layerResponse(
      layer,
      scene.conductance === 'most' ? layer.mostConductanceS : layer.conductanceS,
      scene.pack,
      frequencyHz,
    ),
  )
}

/** How the machine weighs signals in this scene, and what closed layers leave of a piece inside. */
export interface Hearing {
  readonly frequenciesHz: readonly number[]
  readonly whitening: Whitening
  readonly inside: readonly Complex[] | null
  readonly product: readonly Complex[] | null
  readonly layers: readonly (readonly ClosedLayer[])[]
}

/** What the machine cannot learn of the food. */
export function foodResidual({ flow, read }: Scene, parameters: CoilParameters): Residual {
  const assumed = parameters[flow]
  if (!read) return assumed
  return {
    amplitude: assumed.amplitude,
    phaseRad: ((read.phaseDeg * Math.PI) / 180) * parameters.read,
    remainder: (read.amplitudePct / 100) * parameters.read,
  }
}

/** Noise, product and pack at the frequencies that run together. */
export function hearing(scene: Scene, frequenciesHz: readonly number[], parameters: CoilParameters): Hearing {
  const variances = noiseVariances(scene.opening, frequenciesHz, parameters)
  const { block } = scene
  const product = block && frequenciesHz.map((f) => productResponse(block, scene.opening.heightM, f))
  const layers = frequenciesHz.map((f) => layersAt(scene, f))
  const sources: ClutterSource[] = product
    ? [{ responses: product, residual: foodResidual(scene, parameters) }]
    : []
  scene.layers.forEach((_, k) => {
    sources.push({ responses: layers.map((at) => at[k]!.alpha), residual: parameters.wrapper })
  })
  const closed = scene.layers.some(({ kind }) => kind === 'closed tube' || kind === 'closed container')
  return {
    frequenciesHz,
    whitening: whitening(clutterCovariance(variances, sources), variances.length),
    inside: closed ? layers.map(insideFactor) : null,
    product,
    layers,
  }
}
