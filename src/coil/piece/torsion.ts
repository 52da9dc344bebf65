/**
 * Torsion constant J of a rectangle w × h, m⁴: b³a·[1/3 − 0.21·(b/a)·(1 − b⁴/(12a⁴))], a the longer side.
 * Roark, Formulas for Stress and Strain (from memory); within 0.35 % of Saint-Venant's exact series. Eddy currents in
 * a long bar with the field along it obey the equation of the twisted bar, so K per metre is J/4.
 */
export function torsionConstantM4(widthM: number, heightM: number): number {
  const a = Math.max(widthM, heightM)
  const b = Math.min(widthM, heightM)
  return b ** 3 * a * (1 / 3 - 0.21 * (b / a) * (1 - b ** 4 / (12 * a ** 4)))
}
