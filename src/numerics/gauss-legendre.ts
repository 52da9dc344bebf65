/** Nodes and weights of Gauss–Legendre quadrature on [-1, 1]. */
export interface Quadrature {
  readonly nodes: Float64Array
  readonly weights: Float64Array
}

const kept = new Map<number, Quadrature>()

/** n-point rule by Newton iteration on the Legendre polynomial; exact for polynomials to degree 2n - 1. */
export function gaussLegendre(n: number): Quadrature {
  const known = kept.get(n)
  if (known) return known
  const nodes = new Float64Array(n)
  const weights = new Float64Array(n)
  for (let i = 0; i < Math.ceil(n / 2); i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5))
    let slope = 1
    for (let k = 0; k < 100; k++) {
      let previous = 1
      let value = x
      for (let j = 2; j <= n; j++) {
        const next = ((2 * j - 1) * x * value - (j - 1) * previous) / j
        previous = value
        value = next
      }
      slope = (n * (x * value - previous)) / (x * x - 1)
      const step = value / slope
      x -= step
      if (Math.abs(step) < 1e-15) break
    }
    nodes[i] = -x
    nodes[n - 1 - i] = x
    const weight = 2 / ((1 - x * x) * slope * slope)
    weights[i] = weight
    weights[n - 1 - i] = weight
  }
  if (n % 2 === 1) nodes[(n - 1) / 2] = 0
  const rule = { nodes, weights }
  kept.set(n, rule)
  return rule
}
