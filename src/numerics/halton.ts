/** Radical inverse of n in a prime base: one coordinate of the Halton sequence, in (0, 1). */
export function radicalInverse(n: number, base: number): number {
  let result = 0
  let fraction = 1 / base
  for (let rest = n; rest > 0; rest = Math.floor(rest / base)) {
    result += (rest % base) * fraction
    fraction /= base
  }
  return result
}

/** Point n (from 1) of the Halton sequence over the given prime bases. */
export function haltonPoint(n: number, bases: readonly number[]): number[] {
  return bases.map((base) => radicalInverse(n, base))
}
