import { type Complex, complex, divide, scale } from '../../numerics/complex.ts'
import { onePole } from '../piece/sheet.ts'
import { angularFrequency, MU0 } from '../piece/skin-argument.ts'

/** A closed conducting layer: what it adds to the signal, and what it leaves of the field inside. */
export interface ClosedLayer {
  /** Polarizability of the empty layer, m³. */
  readonly alpha: Complex
  /** T = H inside / H0; a piece inside answers with T² of its own polarizability (out and back). */
  readonly inside: Complex
}

/**
 * Closed thin-walled tube with the field along it: cross-section A, perimeter P, length L, sheet
 * conductance S: T = 1/(1 + iωμ0S·A/P), α = −A·L·(1 − T). Exact for a long tube, wall thinner than the
 * skin depth.
 */
export function closedTube(
  areaM2: number,
  perimeterM: number,
  lengthM: number,
  sheetConductanceS: number,
  frequencyHz: number,
): ClosedLayer {
  const q = (angularFrequency(frequencyHz) * MU0 * sheetConductanceS * areaM2) / perimeterM
  return { alpha: onePole(areaM2 * lengthM, q), inside: divide(complex(1), complex(1, q)) }
}

/**
 * Thin closed spherical shell of radius R and sheet conductance S: α = −2πR³·iq/(1 + iq), T = 1/(1 + iq),
 * q = ωμ0SR/3. Exact for a wall thinner than the skin depth (textbook). Stands for a closed metal container.
 */
export function thinShell(radiusM: number, sheetConductanceS: number, frequencyHz: number): ClosedLayer {
  const q = (angularFrequency(frequencyHz) * MU0 * sheetConductanceS * radiusM) / 3
  return { alpha: onePole(2 * Math.PI * radiusM ** 3, q), inside: divide(complex(1), complex(1, q)) }
}

/**
 * Magnetised spherical shell in a steady field, radii b > a, permeability μ, m³:
 * 4πb³(2μ + 1)(μ − 1)(1 − r)/[(2μ + 1)(μ + 2) − 2r(μ − 1)²], r = (a/b)³, and what is left inside:
 * T = 9μ/[(2μ + 1)(μ + 2) − 2r(μ − 1)²]. Textbook, from memory. Stands for a steel can; a real one is
 * also non-linear and remanent.
 */
export function magneticShell(innerM: number, outerM: number, relativePermeability: number): ClosedLayer {
  const mu = relativePermeability
  const r = (innerM / outerM) ** 3
  const denominator = (2 * mu + 1) * (mu + 2) - 2 * r * (mu - 1) ** 2
  const alpha = (4 * Math.PI * outerM ** 3 * (2 * mu + 1) * (mu - 1) * (1 - r)) / denominator
  return { alpha: scale(complex(1), alpha), inside: complex((9 * mu) / denominator) }
}
