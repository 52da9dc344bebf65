/** Logarithm of the gamma function for x > 0: recurrence to x ≥ 12, then Stirling's series; relative error below 1e-13. */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new RangeError(`the gamma function is asked here for x above 0; ${x} was given`)
  let shift = 0
  let at = x
  for (; at < 12; at++) shift += Math.log(at)
  const inverse = 1 / at
  const square = inverse * inverse
  const series = inverse * (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square / 1680)))
  return (at - 0.5) * Math.log(at) - at + 0.5 * Math.log(2 * Math.PI) + series - shift
}

/**
 * Regularised lower incomplete gamma function P(shape, x): series below shape + 1, continued fraction above
 * (modified Lentz). Absolute error about 1e-13.
 */
export function gammaBelow(shape: number, x: number): number {
  if (x <= 0) return 0
  const factor = Math.exp(shape * Math.log(x) - x - logGamma(shape))
  if (x < shape + 1) {
    let term = 1 / shape
    let sum = term
    for (let k = 1; k < 10_000 && term > sum * 1e-17; k++) {
      term *= x / (shape + k)
      sum += term
    }
    return factor * sum
  }
  let b = x + 1 - shape
  let c = 1e300
  let d = 1 / b
  let fraction = d
  for (let k = 1; k < 10_000; k++) {
    const a = -k * (k - shape)
    b += 2
    d = 1 / (a * d + b)
    c = b + a / c
    fraction *= d * c
    if (Math.abs(d * c - 1) < 1e-16) break
  }
  return 1 - factor * fraction
}

/** x with P(shape, x) = chance, 0 < chance < 1, by halving. */
export function gammaQuantile(shape: number, chance: number): number {
  if (!(chance > 0 && chance < 1))
    throw new RangeError(`a chance lies between 0 and 1, without the ends; ${chance} was given`)
  let high = shape + 1
  while (gammaBelow(shape, high) < chance) high *= 2
  let low = 0
  for (let k = 0; k < 100; k++) {
    const middle = (low + high) / 2
    if (gammaBelow(shape, middle) < chance) low = middle
    else high = middle
  }
  return (low + high) / 2
}
