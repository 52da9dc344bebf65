/**
 * Gauss quadrature of a discrete measure: the few nodes and weights that reproduce its first 2m − 1 moments.
 * Lanczos on the diagonal matrix of the points gives the Jacobi matrix; its eigenvalues are the nodes and
 * the first components of its eigenvectors the weights (Golub & Welsch 1969, Math. Comp. 23:221).
 */
export interface DiscreteRule {
  readonly nodes: Float64Array
  readonly weights: Float64Array
}

/** points and their weights (sum 1, none negative), m nodes wanted; fewer come back where fewer suffice. */
export function discreteGauss(
  points: Float64Array,
  measure: Float64Array,
  count: number,
  m: number,
): DiscreteRule {
  const diagonal: number[] = []
  const off: number[] = []
  let previous = new Float64Array(count)
  let current = new Float64Array(count)
  for (let i = 0; i < count; i++) current[i] = Math.sqrt(measure[i]!)
  let spread = 0
  for (let step = 0; step < m; step++) {
    let a = 0
    for (let i = 0; i < count; i++) a += points[i]! * current[i]! * current[i]!
    diagonal.push(a)
    const next = new Float64Array(count)
    let norm = 0
    const beta = step > 0 ? off[step - 1]! : 0
    for (let i = 0; i < count; i++) {
      const v = (points[i]! - a) * current[i]! - beta * previous[i]!
      next[i] = v
      norm += v * v
    }
    norm = Math.sqrt(norm)
    spread = Math.max(spread, Math.abs(a), norm)
    if (step === m - 1 || norm <= 1e-10 * spread || norm === 0) break
    off.push(norm)
    for (let i = 0; i < count; i++) next[i]! /= norm
    previous = current
    current = next
  }
  return tridiagonalRule(Float64Array.from(diagonal), off)
}

/** Eigenvalues and squared first eigenvector components of a symmetric tridiagonal matrix (implicit QL). */
function tridiagonalRule(d: Float64Array, off: readonly number[]): DiscreteRule {
  const n = d.length
  const e = new Float64Array(n)
  for (let i = 0; i < n - 1; i++) e[i] = off[i]!
  const z = new Float64Array(n)
  z[0] = 1
  for (let l = 0; l < n; l++) {
    for (let sweep = 0; sweep < 60; sweep++) {
      let m = l
      while (m < n - 1 && Math.abs(e[m]!) > 1e-15 * (Math.abs(d[m]!) + Math.abs(d[m + 1]!))) m++
      if (m === l) break
      let g = (d[l + 1]! - d[l]!) / (2 * e[l]!)
      let r = Math.hypot(g, 1)
      g = d[m]! - d[l]! + e[l]! / (g + (g >= 0 ? r : -r))
      let s = 1
      let c = 1
      let p = 0
      let i = m - 1
      for (; i >= l; i--) {
        const f = s * e[i]!
        const b = c * e[i]!
        r = Math.hypot(f, g)
        e[i + 1] = r
        if (r === 0) {
          d[i + 1]! -= p
          e[m] = 0
          break
        }
        s = f / r
        c = g / r
        g = d[i + 1]! - p
        r = (d[i]! - g) * s + 2 * c * b
        p = s * r
        d[i + 1] = g + p
        g = c * r - b
        const first = z[i + 1]!
        z[i + 1] = s * z[i]! + c * first
        z[i] = c * z[i]! - s * first
      }
      if (r === 0 && i >= l) continue
      d[l]! -= p
      e[l] = g
      e[m] = 0
    }
  }
  return { nodes: d, weights: z.map((v) => v * v) }
}
