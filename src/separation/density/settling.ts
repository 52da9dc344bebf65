/** What a piece settles in. */
export interface SettlingFluid {
  readonly densityKgPerM3: number
  readonly viscosityPaS: number
}

/** Sphericities the shape equation was fitted for; a value outside is read at the nearer end. */
const FITTED = [0.5, 1] as const

/**
 * Drag coefficient of a sphere: 24/Re·(1 + 0.1806·Re^0.6459) + 0.4251/(1 + 6880.95/Re), Reynolds numbers up
 * to 2.6e5, rms deviation 2 % in log. Source: A. Haider and O. Levenspiel 1989, Powder Technology 58:63
 * (`haider-levenspiel`, from memory).
 */
export const sphereDrag = (reynolds: number): number =>
  (24 / reynolds) * (1 + 0.1806 * reynolds ** 0.6459) + 0.4251 / (1 + 6880.95 / reynolds)

/** Where the balance is looked for; above ln 2.6e5 = 12.5 the drag equation is only carried on. */
const LOG_REYNOLDS = [-30, 20] as const

/** Reynolds number at which drag balances the force: C·Re² = 4/3·d*³, by halving ln Re. */
function balancingReynolds(dStar: number): number {
  const wanted = (4 / 3) * dStar ** 3
  let [low, high]: [number, number] = [...LOG_REYNOLDS]
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2
    const reynolds = Math.exp(middle)
    if (sphereDrag(reynolds) * reynolds ** 2 < wanted) low = middle
    else high = middle
  }
  return Math.exp((low + high) / 2)
}

/**
 * Speed of a piece of sphericity ψ over that of the sphere of equal volume:
 * (18/d*² + 0.5909/√d*)/(18/d*² + (2.3348 − 1.7439ψ)/√d*), the ratio of the explicit velocities of the same
 * paper. Valid for 0.5 ≤ ψ ≤ 1 and bodies of about equal width every way; 10 to 30 % for odd shapes.
 */
function shapeRatio(dStar: number, sphericity: number): number {
  const psi = Math.min(FITTED[1], Math.max(FITTED[0], sphericity))
  const viscous = 18 / dStar ** 2
  const inertial = (value: number) => (2.3348 - 1.7439 * value) / Math.sqrt(dStar)
  return (viscous + inertial(1)) / (viscous + inertial(psi))
}

/**
 * Steady speed of a piece under a force per volume f, m/s, in the direction of f.
 * d* = d·(ρ_f·|f|/μ²)^⅓, C(Re)·Re² = 4/3·d*³, u = Re·μ/(ρ_f·d) times the shape ratio.
 * d: diameter of the sphere of equal volume, m; f: N/m³, for settling g·(ρ_s − ρ_f); ρ_f: kg/m³; μ: Pa·s;
 * ψ: sphericity. Valid for single pieces up to Reynolds numbers of 2.6e5; tends to Stokes' d²f/(18μ) for
 * small spheres and to √(4df/(3·0.46·ρ_f)) for large ones. Source: `haider-levenspiel`.
 */
export function steadySpeedMPerS(
  diameterM: number,
  forceNPerM3: number,
  { densityKgPerM3, viscosityPaS }: SettlingFluid,
  sphericity: number,
): number {
  const force = Math.abs(forceNPerM3)
  if (force === 0 || diameterM === 0) return 0
  const dStar = diameterM * Math.cbrt((densityKgPerM3 * force) / viscosityPaS ** 2)
  const sphere = (balancingReynolds(dStar) * viscosityPaS) / (densityKgPerM3 * diameterM)
  return Math.sign(forceNPerM3) * sphere * shapeRatio(dStar, sphericity)
}
