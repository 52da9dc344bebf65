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

/** Rows of seeds in a skin, along a grain and across it; from memory of a strawberry (mark M). */
const SEED_ROWS = [4.5, 3.5] as const
/** Mean of the squares of a product of two waves where it is positive: what the seeds are denser by is taken off all of it. */
const SEEDS_MEAN = 1 / 8

/**
 * An ellipsoid that narrows along its long axis and is emptier in its middle. At a share t of its length (−1 to 1)
 * its cross-section is 1 − taper·t as wide and as deep; ∫(1 − taper·t)²(1 − t²)dt is 1 + taper²/5 of the plain one, by
 * which it is divided. The core takes away what it gives to all of the grain: over a ball its weight exp(−ρ²/2c²) has
 * the mean {@link coreMean}. A grain that stands up shows its round end: nothing of its taper.
 */
function addFormed(pathMm: Float32Array, raster: Raster, grain: Ellipsoid, form: GrainForm) {
  const { taper, hollow, coreWidth, skinSeeds = 0 } = form
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
  const mean = coreMean(coreWidth)
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
      const core =
        hollow === 0
          ? 0
          : hollow * (mean - Math.exp(-(t * t + across * across) / (2 * coreWidth * coreWidth)))
      const seeds = skinSeeds === 0 ? 0 : skinSeeds * seedsAt(t, across)
      pathMm[row * columns + column]! += scale * narrow * Math.sqrt(inside) * (1 + core + seeds)
    }
  }
}

/** How much of a seed lies in the skin at a place of a grain, over the mean of all its places. */
function seedsAt(t: number, across: number): number {
  const wave = Math.cos(Math.PI * SEED_ROWS[0] * t) * Math.cos(Math.PI * SEED_ROWS[1] * across)
  return (wave > 0 ? wave * wave : 0) - SEEDS_MEAN
}

const coreMeans = new Map<number, number>()

/** Mean of exp(−ρ²/2c²) over the shadow of a ball, weighted with its chords √(1 − ρ²), by the midpoint rule. */
function coreMean(width: number): number {
  const known = coreMeans.get(width)
  if (known !== undefined) return known
  const steps = 2000
  let [weight, sum] = [0, 0]
  for (let i = 0; i < steps; i++) {
    const rho = (i + 0.5) / steps
    const w = rho * Math.sqrt(1 - rho * rho)
    weight += w
    sum += w * Math.exp(-(rho * rho) / (2 * width * width))
  }
  coreMeans.set(width, sum / weight)
  return sum / weight
}

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

/** A pod closer to upright than this is drawn as leaning by so little: the sine of its angle to the beam. */
const LEAST_LEAN = 1e-3

/**
 * A pod: a bar whose ends are half balls, bent in the picture plane, with seeds along it. Beside its axis by b it is cut
 * as a bar of the radius h = √(r² − b²), whose upper edge along the beam is a straight line between the arcs of its two
 * ends; the lower edge is the upper one turned about. Bending moves each cross-section sideways and the seeds sum to
 * nothing, so that neither changes how much food there is.
 */
function addPod(pathMm: Float32Array, raster: Raster, grain: Bar): void {
  const { radius, direction } = grain
  const width = Math.max(LEAST_LEAN, Math.hypot(direction[0], direction[1]))
  const upright = width === LEAST_LEAN
  const x = upright ? LEAST_LEAN : direction[0]
  const y = upright ? 0 : direction[1]
  const z = Math.sqrt(1 - width * width) * (direction[2] < 0 ? -1 : 1)
  const flat = width * width
  const half = Math.max(0, grain.length / 2 - radius)
  const { pitchMm, columns, leftMm, topMm } = raster
  // A pod that stands up shows its end: nothing of its bend.
  const bend = BEND * radius * flat
  const reach = radius + bend
  const stretch = flat * Math.max(half, radius)
  const squared = radius * radius
  const endAt = half * width
  const climb = Math.abs(z)
  const toTheEnd = (z < 0 ? -1 : 1) / width
  const seedWave = (2 * Math.PI) / (flat * SEED_PITCH * radius)
  const seedsPerCore = (SEED_SHARE * flat) / squared
  const [perWidth, perStretch] = [1 / width, 1 / stretch]
  // The wave of the seeds goes on by the same angle from cell to cell.
  const [stepCosine, stepSine] = [Math.cos(seedWave * pitchMm * x), Math.sin(seedWave * pitchMm * x)]
  /** How high the cut through the pod reaches at p along its shadow, h being its radius there; below 0 where it is not. */
  const upper = (p: number, h: number) => {
    const edge = p + h * climb
    if (edge <= endAt && edge >= -endAt) return (climb * p + h) / width
    const beyond = edge > endAt ? p - endAt : p + endAt
    const inside = h * h - beyond * beyond
    const end = edge > endAt ? half * climb : -half * climb
    return inside > 0 ? end + Math.sqrt(inside) : Number.NEGATIVE_INFINITY
  }
  const [rowFrom, rowTo] = rangeOf(grain.v, Math.abs(y) * half + reach, topMm, pitchMm, raster.rows)
  const [first, last] = rangeOf(grain.u, Math.abs(x) * half + reach, leftMm, pitchMm, columns)
  for (let row = rowFrom; row <= rowTo; row++) {
    const v = topMm + (row + 0.5) * pitchMm - grain.v
    // Beside its bent axis a pod is nowhere wider than its radius: most of the box around a slanted one is empty.
    let from = first
    let to = last
    if (Math.abs(y) > 1e-3) {
      const one = (v * x - (radius + (2 / 3) * bend) * width) / y
      const other = (v * x + (radius + bend / 3) * width) / y
      from = Math.max(from, Math.floor((grain.u + Math.min(one, other) - leftMm) / pitchMm - 0.5))
      to = Math.min(to, Math.ceil((grain.u + Math.max(one, other) - leftMm) / pitchMm - 0.5))
    }
    const start = seedWave * ((leftMm + (from + 0.5) * pitchMm - grain.u) * x + v * y)
    let cosine = Math.cos(start)
    let sine = Math.sin(start)
    for (let column = from; column <= to; column++) {
      const seedAt = cosine
      cosine = seedAt * stepCosine - sine * stepSine
      sine = sine * stepCosine + seedAt * stepSine
      const u = leftMm + (column + 0.5) * pitchMm - grain.u
      const along = u * x + v * y
      const place = along * perStretch
      const bent = Math.min(place * place, 1)
      const beside = (v * x - u * y) * perWidth - bend * (bent - 1 / 3)
      const cut = squared - beside * beside
      if (cut <= 0) continue
      const h = Math.sqrt(cut)
      const p = along * toTheEnd
      const chord = Math.abs(p) + h * climb <= endAt ? 2 * h * perWidth : upper(p, h) + upper(-p, h)
      if (!(chord > 0)) continue
      const core = squared - 2 * beside * beside
      const seeds = core > 0 ? seedsPerCore * core * seedAt : 0
      pathMm[row * columns + column]! += chord * (1 + seeds)
    }
  }
}
