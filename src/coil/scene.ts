import type { Complex } from '../numerics/complex.ts'
import { type ClutterSource, clutterCovariance, type Whitening, whitening } from './food/clutter.ts'
import { type ProductBlock, productResponse } from './food/product-block.ts'
import { type FieldOpening, noiseVariances } from './opening/noise.ts'
import type { ClosedLayer } from './pack/closed-wrap.ts'
import { insideFactor, layerResponse, type PackExtent, type PackLayer } from './pack/packaging.ts'
import type { CoilParameters } from './parameters.ts'

/** Everything in the opening but the piece of metal. */
export interface Scene {
  readonly opening: FieldOpening
  /** null: the food adds no signal (P = 0). */
  readonly block: ProductBlock | null
  readonly pack: PackExtent
  readonly layers: readonly PackLayer[]
  /** Sheet conductance of the layers: the central one, or the most it may be. */
  readonly conductance: 'central' | 'most'
}

/** σ below which a food does not count as a conductor, and εr above and below the second step (model). */
const CONDUCTS_FROM_S_PER_M = 0.001
const WET_FROM_S_PER_M = 0.01
const WET_PERMITTIVITY = 80
const MOIST_PERMITTIVITY = 5

/** σ and εr that enter the product term: none below 0.001 S/m, εr 5 up to 0.01 S/m, 80 from there. */
export function productTerm(conductivitySPerM: number): { sPerM: number; relativePermittivity: number } {
  if (conductivitySPerM < CONDUCTS_FROM_S_PER_M) return { sPerM: 0, relativePermittivity: 0 }
  return {
    sPerM: conductivitySPerM,
    relativePermittivity: conductivitySPerM >= WET_FROM_S_PER_M ? WET_PERMITTIVITY : MOIST_PERMITTIVITY,
  }
}

/** The empty opening: no product, no pack. */
export const emptyScene = (scene: Scene): Scene => ({ ...scene, block: null, layers: [] })

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

/** Noise, product and pack at the frequencies that run together. */
export function hearing(scene: Scene, frequenciesHz: readonly number[], parameters: CoilParameters): Hearing {
  const variances = noiseVariances(scene.opening, frequenciesHz, parameters)
  const { block } = scene
  const product = block && frequenciesHz.map((f) => productResponse(block, scene.opening.heightM, f))
  const layers = frequenciesHz.map((f) => layersAt(scene, f))
  const sources: ClutterSource[] = product ? [{ responses: product, residual: parameters.product }] : []
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
