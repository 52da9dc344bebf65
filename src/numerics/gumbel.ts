const EULER = 0.5772156649015329

/**
 * What the largest of many exceeds with a chance, from a sample of largest ones: a Gumbel distribution with their mean
 * and variance (moments, Gumbel 1958, Statistics of Extremes; the tail of maxima of what falls off like a normal or an
 * exponential). Throws RangeError with fewer than two values or a chance outside 0 to 1.
 */
export function gumbelUpper(largest: readonly number[], chance: number): number {
  if (largest.length < 2) throw new RangeError(`a tail needs at least 2 values; ${largest.length} were given`)
  if (!(chance > 0 && chance < 1)) throw new RangeError(`a chance lies between 0 and 1; ${chance} was given`)
  const mean = largest.reduce((sum, v) => sum + v, 0) / largest.length
  const variance = largest.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (largest.length - 1)
  const scale = Math.sqrt(6 * variance) / Math.PI
  return mean - EULER * scale - scale * Math.log(-Math.log1p(-chance))
}
