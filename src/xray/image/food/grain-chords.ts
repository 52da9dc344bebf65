import type { GrainForm } from './grain-shapes.ts'
import type { Raster } from './raster.ts'

/** Three numbers along u, v and the beam w. */
export type Vector = readonly [number, number, number]

/** A convex grain in the picture: its centre (u, v) and how it lies. Lengths in mm. */
export type Grain =
  | {
      readonly kind: 'ellipsoid'
      readonly u: number
      readonly v: number
      /** Half axes and the three directions they point in (orthonormal). */
      readonly halfAxes: Vector
      readonly directions: readonly [Vector, Vector, Vector]
      readonly form?: GrainForm
    }
  | {
      /** A rod or a disc: a round bar of a radius and a length along a direction. */
      readonly kind: 'bar'
      readonly u: number
      readonly v: number
      readonly radius: number
      readonly length: number
      readonly direction: Vector
      /** Its ends are half balls within the length. */
      readonly roundEnds: boolean
    }

type Ellipsoid = Extract<Grain, { kind: 'ellipsoid' }>
type Bar = Extract<Grain, { kind: 'bar' }>

/** Adds a grain's chord along the beam, mm, to the path of every cell it covers. */
export function addGrain(pathMm: Float32Array, raster: Raster, grain: Grain): void {
  if (grain.kind === 'ellipsoid')
    grain.form ? addFormed(pathMm, raster, grain, grain.form) : addEllipsoid(pathMm, raster, grain)
  else if (grain.roundEnds) addPod(pathMm, raster, grain)
  else addBar(pathMm, raster, grain)
}

function rangeOf(centre: number, reach: number, start: number, pitch: number, count: number) {
  return [
    Math.max(0, Math.ceil((centre - reach - start) / pitch - 0.5)),
    Math.min(count - 1, Math.floor((centre + reach - start) / pitch - 0.5)),
  ] as const
}

/**
 * Ellipsoid xᵀQx = 1, Q = Σ dᵢdᵢᵀ/aᵢ²: along the beam Q₃₃w² + 2Bw + C − 1 = 0 with B = Q₁₃u + Q₂₃v and
 * C = Q₁₁u² + 2Q₁₂uv + Q₂₂v²; chord 2√(B² − Q₃₃(C − 1))/Q₃₃.
 */
function addEllipsoid(pathMm: Float32Array, raster: Raster, grain: Ellipsoid): void {
  const { halfAxes, directions } = grain
  let [q11, q12, q13, q22, q23, q33] = [0, 0, 0, 0, 0, 0]
  let [reachU, reachV] = [0, 0]
  for (let k = 0; k < 3; k++) {
    const [x, y, z] = directions[k]!
    const inverse = 1 / halfAxes[k]! ** 2
    q11 += x * x * inverse
    q12 += x * y * inverse
    q13 += x * z * inverse
    q22 += y * y * inverse
    q23 += y * z * inverse
    q33 += z * z * inverse
    reachU += (x * halfAxes[k]!) ** 2
    reachV += (y * halfAxes[k]!) ** 2
  }
  const e11 = q11 - (q13 * q13) / q33
  const e12 = q12 - (q13 * q23) / q33
  const e22 = q22 - (q23 * q23) / q33
  const scale = 2 / Math.sqrt(q33)
  const { pitchMm, columns, leftMm, topMm } = raster
  const [rowFrom, rowTo] = rangeOf(grain.v, Math.sqrt(reachV), topMm, pitchMm, raster.rows)
  const widest = Math.sqrt(reachU)
  for (let row = rowFrom; row <= rowTo; row++) {
    const v = topMm + (row + 0.5) * pitchMm - grain.v
    const root = (e12 * v) ** 2 - e11 * (e22 * v * v - 1)
    if (root <= 0) continue
    const middle = (-e12 * v) / e11
    const half = Math.min(2 * widest, Math.sqrt(root) / e11)
    const [from, to] = rangeOf(grain.u + middle, half, leftMm, pitchMm, columns)
    for (
      let column = from, u = leftMm + (from + 0.5) * pitchMm - grain.u;
      column <= to;
      column++, u += pitchMm
    ) {
      const inside = 1 - (e11 * u * u + 2 * e12 * u * v + e22 * v * v)
      if (inside > 0) pathMm[row * columns + column]! += scale * Math.sqrt(inside)
    }
  }
}

/** Width of a hollow core, in half widths of the grain. */
const CORE = 0.42

/**
 * An ellipsoid that narrows along its long axis and is emptier in its middle. At a share t of its length (−1 to 1)
 * its cross-section is 1 − taper·t as wide and as deep; ∫(1 − taper·t)²(1 − t²)dt is 1 + taper²/5 of the plain one, by
 * which it is divided. The core takes away what it gives to all of the grain: over a ball its weight exp(−ρ²/2c²) has the
 * mean {@link CORE_MEAN}. A grain that stands up shows its round end: nothing of its taper.
 */
function addFormed(pathMm: Float32Array, raster: Raster, grain: Ellipsoid, { taper, hollow }: GrainForm) {
  const { halfAxes, directions } = grain
  const [x, y] = directions[0]
  const flat = Math.hypot(x, y)
  const [alongU, alongV] = flat > 1e-6 ? [x / flat, y / flat] : [1, 0]
  const k = taper * flat
  // The shadow of an ellipsoid: its reach along the long axis as seen, and across it.
  const reach = (u: number, v: number) =>
    Math.sqrt(directions.reduce((sum, d, i) => sum + (halfAxes[i]! * (d[0] * u + d[1] * v)) ** 2, 0))
  const long = reach(alongU, alongV)
  const wide = reach(-alongV, alongU)
  const deep = (halfAxes[0] * halfAxes[1] * halfAxes[2]) / (long * wide)
  const scale = (2 * deep) / (1 + (k * k) / 5)
  const { pitchMm, columns, leftMm, topMm } = raster
  const most = Math.max(long, wide * (1 + k))
  const [rowFrom, rowTo] = rangeOf(grain.v, most, topMm, pitchMm, raster.rows)
  const [from, to] = rangeOf(grain.u, most, leftMm, pitchMm, columns)
  for (let row = rowFrom; row <= rowTo; row++) {
    const v = topMm + (row + 0.5) * pitchMm - grain.v
    for (let column = from; column <= to; column++) {
      const u = leftMm + (column + 0.5) * pitchMm - grain.u
      const t = (u * alongU + v * alongV) / long
      if (t <= -1 || t >= 1) continue
      const narrow = 1 - k * t
      const across = (v * alongU - u * alongV) / (wide * narrow)
      const inside = 1 - t * t - across * across
      if (inside <= 0) continue
      const core = hollow * (CORE_MEAN - Math.exp(-(t * t + across * across) / (2 * CORE * CORE)))
      pathMm[row * columns + column]! += scale * narrow * Math.sqrt(inside) * (1 + core)
    }
  }
}

/** Mean of exp(−ρ²/2c²) over the shadow of a ball, weighted with its chords √(1 − ρ²), by the midpoint rule. */
const CORE_MEAN = (() => {
  const steps = 2000
  let [weight, sum] = [0, 0]
  for (let i = 0; i < steps; i++) {
    const rho = (i + 0.5) / steps
    const w = rho * Math.sqrt(1 - rho * rho)
    weight += w
    sum += w * Math.exp(-(rho * rho) / (2 * CORE * CORE))
  }
  return sum / weight
})()

/** Round bar: the chord is what a slab (the length) leaves of an endless cylinder. */
function addBar(pathMm: Float32Array, raster: Raster, grain: Bar): void {
  const { radius, direction } = grain
  const [x, y, z] = direction
  const half = grain.length / 2
  const across = 1 - z * z
  const { pitchMm, columns, leftMm, topMm } = raster
  const reach = (d: number) => Math.abs(d) * half + radius * Math.sqrt(Math.max(0, 1 - d * d))
  const [rowFrom, rowTo] = rangeOf(grain.v, reach(y), topMm, pitchMm, raster.rows)
  const [from, to] = rangeOf(grain.u, reach(x), leftMm, pitchMm, columns)
  for (let row = rowFrom; row <= rowTo; row++) {
    const v = topMm + (row + 0.5) * pitchMm - grain.v
    for (let column = from; column <= to; column++) {
      const u = leftMm + (column + 0.5) * pitchMm - grain.u
      const along = u * x + v * y
      const offset = u * u + v * v - along * along
      let low = Number.NEGATIVE_INFINITY
      let high = Number.POSITIVE_INFINITY
      if (across > 1e-6) {
        const root = (along * z) ** 2 - across * (offset - radius * radius)
        if (root <= 0) continue
        low = (along * z - Math.sqrt(root)) / across
        high = (along * z + Math.sqrt(root)) / across
      } else if (offset >= radius * radius) continue
      if (Math.abs(z) > 1e-6) {
        const a = (-half - along) / z
        const b = (half - along) / z
        low = Math.max(low, Math.min(a, b))
        high = Math.min(high, Math.max(a, b))
      } else if (Math.abs(along) > half) continue
      if (high > low) pathMm[row * columns + column]! += high - low
    }
  }
}

/** How far a pod is bent to its side, in its radii; shapes as they look, from memory (mark M). */
const BEND = 0.8
/** Seeds along a pod: their pitch in its radii, and how much denser than the mean of the pod its middle line is there. */
const SEED_PITCH = 2.4
const SEED_SHARE = 0.22

/**
 * A pod: a bar whose ends are half balls, bent in the picture plane, with seeds along it. Unbent it is convex, so its
 * chord reaches from the lowest to the highest of the chords through its straight part and its two ends; bending moves
 * each cross-section sideways and the seeds sum to nothing, so that neither changes how much food there is.
 */
function addPod(pathMm: Float32Array, raster: Raster, grain: Bar): void {
  const { radius, direction } = grain
  const [x, y, z] = direction
  const half = Math.max(0, grain.length / 2 - radius)
  const across = 1 - z * z
  const { pitchMm, columns, leftMm, topMm } = raster
  // A pod that stands up shows its end: nothing of its bend.
  const bend = BEND * radius * across
  const flat = Math.max(across, 1e-6)
  const width = Math.sqrt(flat)
  const reach = radius + bend
  const stretch = flat * Math.max(half, radius)
  const squared = radius * radius
  const [rowFrom, rowTo] = rangeOf(grain.v, Math.abs(y) * half + reach, topMm, pitchMm, raster.rows)
  const [first, last] = rangeOf(grain.u, Math.abs(x) * half + reach, leftMm, pitchMm, columns)
  for (let row = rowFrom; row <= rowTo; row++) {
    const straightV = topMm + (row + 0.5) * pitchMm - grain.v
    // Beside its bent axis a pod is nowhere wider than its radius: most of the box around a slanted one is empty.
    let [from, to] = [first, last]
    if (Math.abs(y) > 1e-3) {
      const one = (straightV * x - (radius + (2 / 3) * bend) * width) / y
      const other = (straightV * x + (radius + bend / 3) * width) / y
      from = Math.max(from, Math.floor((grain.u + Math.min(one, other) - leftMm) / pitchMm - 0.5))
      to = Math.min(to, Math.ceil((grain.u + Math.max(one, other) - leftMm) / pitchMm - 0.5))
    }
    for (let column = from; column <= to; column++) {
      const straightU = leftMm + (column + 0.5) * pitchMm - grain.u
      const place = Math.max(-1, Math.min(1, (straightU * x + straightV * y) / stretch))
      const aside = bend * (place * place - 1 / 3)
      const u = straightU + (y * aside) / width
      const v = straightV - (x * aside) / width
      const beside = (v * x - u * y) / width
      if (beside * beside >= squared) continue
      let low = Number.POSITIVE_INFINITY
      let high = Number.NEGATIVE_INFINITY
      for (let end = -half, k = 0; k < 2; k++, end = half) {
        const [du, dv] = [u - end * x, v - end * y]
        const inside = squared - du * du - dv * dv
        if (inside <= 0) continue
        const root = Math.sqrt(inside)
        if (end * z - root < low) low = end * z - root
        if (end * z + root > high) high = end * z + root
      }
      const along = u * x + v * y
      const root = (along * z) ** 2 - across * (u * u + v * v - along * along - squared)
      if (across > 1e-6 && root > 0) {
        const reachW = Math.sqrt(root)
        let a = (along * z - reachW) / across
        let b = (along * z + reachW) / across
        if (Math.abs(z) > 1e-6) {
          const p = (-half - along) / z
          const q = (half - along) / z
          a = Math.max(a, Math.min(p, q))
          b = Math.min(b, Math.max(p, q))
        } else if (Math.abs(along) > half) b = Number.NEGATIVE_INFINITY
        if (b > a) {
          low = Math.min(low, a)
          high = Math.max(high, b)
        }
      }
      if (high <= low) continue
      const core = Math.max(0, 1 - (2 * beside ** 2) / squared)
      const seeds =
        SEED_SHARE * across * core * Math.cos((2 * Math.PI * along) / (flat * SEED_PITCH * radius))
      pathMm[row * columns + column]! += (high - low) * (1 + seeds)
    }
  }
}
