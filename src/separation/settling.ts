/** What a piece settles in. */
export interface SettlingFluid {
  readonly densityKgPerM3: number
  readonly viscosityPaS: number
}

/** Sphericities the equation was fitted for; a value outside is read at the nearer end. */
const FITTED = [0.5, 1] as const

/**
 * Steady speed of a piece under a force per volume f, m/s, in the direction of f.
 * d* = d·(ρ_f·|f|/μ²)^⅓, u* = [18/d*² + (2.3348 − 1.7439ψ)/√d*]⁻¹, u = u*·(μ·|f|/ρ_f²)^⅓.
 * d: diameter of the sphere of equal volume, m; f: N/m³, for settling g·(ρ_s − ρ_f); ρ_f: kg/m³; μ: Pa·s;
 * ψ: sphericity. Valid for single pieces at 0.5 ≤ ψ ≤ 1 and Reynolds numbers up to about 2e5; tends to
 * Stokes' d²f/(18μ) for small and to √(d·f/ρ_f) for large pieces.
 * Source: A. Haider and O. Levenspiel 1989, Powder Technology 58:63 (`haider-levenspiel`, from memory).
 */
export function steadySpeedMPerS(
  diameterM: number,
  forceNPerM3: number,
  { densityKgPerM3, viscosityPaS }: SettlingFluid,
  sphericity: number,
): number {
  const force = Math.abs(forceNPerM3)
  if (force === 0 || diameterM === 0) return 0
  const psi = Math.min(FITTED[1], Math.max(FITTED[0], sphericity))
  const d = diameterM * Math.cbrt((densityKgPerM3 * force) / viscosityPaS ** 2)
  const u = 1 / (18 / d ** 2 + (2.3348 - 1.7439 * psi) / Math.sqrt(d))
  return Math.sign(forceNPerM3) * u * Math.cbrt((viscosityPaS * force) / densityKgPerM3 ** 2)
}
