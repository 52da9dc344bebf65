import { MU0_T_M_PER_A } from '../physical-constants.ts'

/** How a material answers a steady field. */
export interface Magnetism {
  /** Susceptibility χ = μr − 1 of the bulk. */
  readonly susceptibility: number
  /** Largest flux density it adds, μ0·Ms, T; Infinity where it never saturates in the fields met here. */
  readonly saturationTesla: number
}

/** A row of alternating poles, as seen from its surface. */
export interface PoleField {
  readonly surfaceTesla: number
  /** k, 1/m: the field falls by a factor e over 1/k. */
  readonly decayPerM: number
}

/**
 * χ_eff = χ/(1 + N·χ): susceptibility of a piece against the field outside it, N its demagnetising factor.
 * A sphere never exceeds 3, however permeable. Source: `sphere-force`.
 */
export const effectiveSusceptibility = (susceptibility: number, demagnetising: number): number =>
  susceptibility / (1 + demagnetising * susceptibility)

/**
 * |B| at a distance z from the poles: B₀·exp(−k·z), k = π/p for pole pitch p. Valid for a plane of equal
 * poles beyond about a quarter pitch; a round bar falls off a little faster. Source: `periodic-field`.
 */
export const fieldTesla = ({ surfaceTesla, decayPerM }: PoleField, distanceM: number): number =>
  surfaceTesla * Math.exp(-decayPerM * distanceM)

/**
 * Pull per volume, N/m³: min(χ_eff·B, Bs)/μ0 · |∇B|, with |∇B| = k·B. Unsaturated this is χ_eff·B·∇B/μ0;
 * it holds for a piece much smaller than the pole pitch, in any size. Source: `sphere-force`.
 */
export function pullNPerM3(
  field: PoleField,
  distanceM: number,
  { susceptibility, saturationTesla }: Magnetism,
  demagnetising: number,
): number {
  const flux = fieldTesla(field, distanceM)
  const own = Math.min(effectiveSusceptibility(susceptibility, demagnetising) * flux, saturationTesla)
  return (own / MU0_T_M_PER_A) * field.decayPerM * flux
}
