import { type Complex, complex, divide, scale } from '../../numerics/complex.ts'
import { angularFrequency, MU0 } from './skin-argument.ts'
import { torsionConstantM4 } from './torsion.ts'

/** −A·iq/(1 + iq): a body that rings with one time constant, from resistive (q ≪ 1) to perfect (q ≫ 1). */
export function onePole(perfectM3: number, q: number): Complex {
  return scale(divide(complex(0, q), complex(1, q)), -perfectM3)
}

/** Polarizability of a perfectly conducting thin disc, field along its normal, m³: (8/3)·R³. */
const perfectDiscM3 = (radiusM: number): number => (8 / 3) * radiusM ** 3

/**
 * Thin conducting disc of radius R and sheet conductance S = σ·t (siemens), field along its normal, m³.
 * Both limits are exact: −i(π/8)R⁴ωμ0S and −(8/3)R³; between them one pole (assumption),
 * q = (3π/64)·ωμ0SR.
 */
export function discPolarizability(radiusM: number, sheetConductanceS: number, frequencyHz: number): Complex {
  const q = ((3 * Math.PI) / 64) * angularFrequency(frequencyHz) * MU0 * sheetConductanceS * radiusM
  return onePole(perfectDiscM3(radiusM), q)
}

/**
 * Thin rectangular sheet w × l, field along its normal, m³: the disc's bridge with the resistive limit of
 * the rectangle, −iωμ0S·J(w, l)/4, and the perfect limit of the disc of equal area (assumption; about
 * 15 % in the limits, unverified between).
 */
export function rectanglePolarizability(
  widthM: number,
  lengthM: number,
  sheetConductanceS: number,
  frequencyHz: number,
): Complex {
  const perfect = perfectDiscM3(Math.sqrt((widthM * lengthM) / Math.PI))
  const loss =
    (angularFrequency(frequencyHz) * MU0 * sheetConductanceS * torsionConstantM4(widthM, lengthM)) / 4
  return onePole(perfect, loss / perfect)
}
