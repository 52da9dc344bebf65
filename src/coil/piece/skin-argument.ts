import type { Complex } from '../../numerics/complex.ts'

/** Magnetic constant, H/m (the pre-2019 defined value; the difference to the measured one is 5e-10). */
export const MU0 = 4e-7 * Math.PI
/** Electric constant, F/m (CODATA 2018). */
export const EPSILON0 = 8.8541878128e-12

/** What a metal is to an alternating magnetic field. */
export interface Conductor {
  /** σ, S/m. */
  readonly conductivitySPerM: number
  /** μr, relative; taken as real and constant over the frequencies of a coil. */
  readonly relativePermeability: number
}

/** ω = 2πf, rad/s. */
export const angularFrequency = (frequencyHz: number): number => 2 * Math.PI * frequencyHz

/** Skin depth δ = √(2/(ω·μr·μ0·σ)), m. */
export function skinDepthM(metal: Conductor, frequencyHz: number): number {
  return Math.sqrt(
    2 / (angularFrequency(frequencyHz) * metal.relativePermeability * MU0 * metal.conductivitySPerM),
  )
}

/**
 * x = γ·a = (1 + i)·a/δ for a length a in m. Time factor exp(+iωt) everywhere in this room, so a loss
 * shows as a negative imaginary part of a polarizability.
 */
export function skinArgument(lengthM: number, metal: Conductor, frequencyHz: number): Complex {
  const ratio = lengthM / skinDepthM(metal, frequencyHz)
  return { re: ratio, im: ratio }
}
