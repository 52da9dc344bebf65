/**
 * Quantile of Student's t from the normal one (Abramowitz & Stegun 1964, 26.7.5): within 0.1 % from 5 degrees of
 * freedom at tails of 0.05.
 */
export function studentQuantile(z: number, degrees: number): number {
  const [v, z2] = [degrees, z * z]
  const g1 = (z * (z2 + 1)) / 4
  const g2 = (z * ((5 * z2 + 16) * z2 + 3)) / 96
  const g3 = (z * (((3 * z2 + 19) * z2 + 17) * z2 - 15)) / 384
  const g4 = (z * ((((79 * z2 + 776) * z2 + 1482) * z2 - 1920) * z2 - 945)) / 92160
  return z + g1 / v + g2 / v ** 2 + g3 / v ** 3 + g4 / v ** 4
}
