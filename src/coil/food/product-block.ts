import { type Complex, complex, scale } from '../../numerics/complex.ts'
import { angularFrequency, EPSILON0, MU0 } from '../piece/skin-argument.ts'
import { torsionConstantM4 } from '../piece/torsion.ts'

/** A food block in the opening; the field runs along its length (the travel). */
export interface ProductBlock {
  readonly widthM: number
  readonly heightM: number
  readonly lengthM: number
  /** σ of the food as it lies, S/m; 0 for a food that does not count as a conductor. */
  readonly conductivitySPerM: number
  readonly relativePermittivity: number
  /** χ of a weakly magnetic food (iron powder), 0 for all others. */
  readonly susceptibility: number
  /** How many such blocks lie side by side in the opening. */
  readonly sideBySide: number
}

/** Share of the opening's height the sensing lobe of one receiver reaches along the travel (computed). */
export const SENSING_LENGTH_RATIO = 0.6

/** Length that takes part, m: 0.6h·tanh(L/(0.6h)); within 3 % of the exact integral over the lobe. */
export function sensedLengthM(lengthM: number, openingHeightM: number): number {
  const sensing = SENSING_LENGTH_RATIO * openingHeightM
  return sensing * Math.tanh(lengthM / sensing)
}

/** Rise of the field away from the centre, 1 + 0.8·min(1, h_product/h)² (computed, fit). */
export function offCentreFactor(blockHeightM: number, openingHeightM: number): number {
  return 1 + 0.8 * Math.min(1, blockHeightM / openingHeightM) ** 2
}

/**
 * Polarizability of a weakly conducting body with geometry constant K (m⁵), m³: −iωμ0·s·K with
 * s = σ + iωε0εr. Valid while ωμ0σb² ≪ 1 (0.16 for 2 S/m, 10 cm, 1 MHz).
 */
export function weakConductor(
  geometryM5: number,
  conductivitySPerM: number,
  relativePermittivity: number,
  frequencyHz: number,
): Complex {
  const w = angularFrequency(frequencyHz)
  const displacement = w * EPSILON0 * relativePermittivity
  return scale(complex(displacement, -conductivitySPerM), w * MU0 * geometryM5)
}

/** Rectangular block w × h × L, field along L, without the limits of the coil: K = L·J(w, h)/4, m³. */
export function blockPolarizability(
  block: Pick<ProductBlock, 'widthM' | 'heightM' | 'lengthM' | 'conductivitySPerM' | 'relativePermittivity'>,
  frequencyHz: number,
): Complex {
  const k = (block.lengthM * torsionConstantM4(block.widthM, block.heightM)) / 4
  return weakConductor(k, block.conductivitySPerM, block.relativePermittivity, frequencyHz)
}

/** Sphere of radius b: K = (2π/15)b⁵, m⁵. */
export const sphereGeometryM5 = (radiusM: number): number => ((2 * Math.PI) / 15) * radiusM ** 5

/**
 * What the food adds to the signal of a coil of opening height h, m³: the block over its sensed length,
 * plus χ·w·h_product·L for a magnetic one, both times the off-centre factor.
 */
export function productResponse(block: ProductBlock, openingHeightM: number, frequencyHz: number): Complex {
  const lengthM = sensedLengthM(block.lengthM, openingHeightM)
  const eddy = blockPolarizability({ ...block, lengthM }, frequencyHz)
  const magnetic = block.susceptibility * block.widthM * block.heightM * lengthM
  return scale(
    complex(eddy.re + magnetic, eddy.im),
    block.sideBySide * offCentreFactor(block.heightM, openingHeightM),
  )
}
