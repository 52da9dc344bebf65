import { type GrainBody, grainBody } from './grain-body.ts'
import type { Vector } from './grain-chords.ts'
import { type Axes, fallenAxes } from './grain-lie.ts'
import type { GrainShape } from './grain-shapes.ts'
import type { Random } from './random.ts'

/** A grain of a tile: its body, its middle (w from mid-depth), and where its axes point. */
export interface LyingGrain {
  readonly body: GrainBody
  u: number
  v: number
  w: number
  axes: Axes
}

/** A bed that repeats along u and v: side and depth in mm. */
export interface Tile {
  readonly sideMm: number
  readonly depthMm: number
  readonly grains: readonly LyingGrain[]
  /** Largest overlap that is left, mm, and the mean one of those that overlap. */
  readonly worstOverlapMm: number
}

/**
 * Grains thrown into one box: one at a packing of 0.60, which holds density even; more, evenly up to twelve at 0.45,
 * where the packing is loose, because a loose bed clumps. Chosen so that round grains show the grain pattern of the
 * hard-sphere table (test/xray/image/grain-bed.test.ts).
 */
const GRAINS_PER_LOOSE_BOX = 12
function grainsPerBox(packing: number): number {
  const looseness = Math.min(1, Math.max(0, (0.6 - packing) / 0.15))
  return 1 + (GRAINS_PER_LOOSE_BOX - 1) * looseness
}

/** An overlap below this share of the grain's radius counts as touching. */
const TOUCHING = 0.03
/** How far a body follows the sum of what pushes it. */
const FOLLOW = 0.6
/** No push moves a body by more than this share of its ball in a sweep. */
const LARGEST_MOVE = 0.5

/**
 * Grains of a food thrown at random between a floor and a lid, then moved and turned apart as bodies of several balls
 * until none overlaps (overlap removal, after Jodrey & Tory 1985, Phys. Rev. A 32:2347). Their volume is
 * exactly the packing's share of the tile. grainMm: diameter of the ball of mean volume. What still overlaps after
 * mostSweeps is left so.
 */
export function relaxedTile(
  shape: GrainShape,
  packing: number,
  grainMm: number,
  sideMm: number,
  depthMm: number,
  beam: 'down' | 'side',
  random: Random,
  mostSweeps: number,
): Tile {
  const grains = thrown(shape, packing, grainMm, sideMm, depthMm, beam, random)
  let worst = 0
  for (let sweep = 0; sweep < mostSweeps; sweep++) {
    worst = pushApart(grains, sideMm, depthMm)
    if (worst < (TOUCHING * grainMm) / 2) break
  }
  return { sideMm, depthMm, grains, worstOverlapMm: worst }
}

function thrown(
  shape: GrainShape,
  packing: number,
  grainMm: number,
  sideMm: number,
  depthMm: number,
  beam: 'down' | 'side',
  random: Random,
): LyingGrain[] {
  const sigma = Math.sqrt(Math.log(1 + shape.spread ** 2))
  const wantedMm3 = packing * sideMm * sideMm * depthMm
  const count = Math.max(1, Math.round(wantedMm3 / ((Math.PI / 6) * grainMm ** 3)))
  const drawn = Array.from({ length: count }, () => Math.exp(sigma * random.normal() - 1.5 * sigma * sigma))
  const volume = drawn.reduce((sum, r) => sum + (4 / 3) * Math.PI * ((r * grainMm) / 2) ** 3, 0)
  const scale = Math.cbrt(wantedMm3 / volume)
  const boxSide = Math.cbrt((sideMm * sideMm * depthMm * grainsPerBox(packing)) / count)
  const share = (mm: number) => Math.max(1, Math.round(mm / boxSide))
  const [nu, nw] = [share(sideMm), share(depthMm)]
  const boxes = nu * nu * nw
  return drawn.map((r, i) => {
    // Spread over the boxes as evenly as the count allows.
    const box = Math.floor(((i + random.uniform()) * boxes) / count) % boxes
    const [x, y, z] = [Math.floor(box / (nu * nw)), Math.floor(box / nw) % nu, box % nw]
    return {
      body: grainBody(shape, (r * scale * grainMm) / 2),
      u: ((x + random.uniform()) / nu) * sideMm,
      v: ((y + random.uniform()) / nu) * sideMm,
      w: ((z + random.uniform()) / nw - 0.5) * depthMm,
      axes: fallenAxes(shape, beam, random),
    }
  })
}

type Coordinates = [Float64Array, Float64Array, Float64Array, Float64Array]

/** One sweep: every pair of overlapping balls of two bodies pushes both, by moving and by turning. Gives the worst overlap. */
function pushApart(grains: readonly LyingGrain[], sideMm: number, depthMm: number): number {
  const balls = grains.reduce((sum, { body }) => sum + body.at.length, 0)
  const owner = new Int32Array(balls)
  const [x, y, z, radius] = [0, 1, 2, 3].map(() => new Float64Array(balls)) as Coordinates
  let largest = 0
  let filled = 0
  grains.forEach((grain, g) => {
    const [a, b, c] = grain.axes
    grain.body.at.forEach(([p, q, s], k) => {
      owner[filled] = g
      x[filled] = grain.u + p * a[0] + q * b[0] + s * c[0]
      y[filled] = grain.v + p * a[1] + q * b[1] + s * c[1]
      z[filled] = grain.w + p * a[2] + q * b[2] + s * c[2]
      radius[filled] = grain.body.radiusMm[k]!
      largest = Math.max(largest, radius[filled++]!)
    })
  })
  const n = grains.length
  const move = new Float64Array(3 * n)
  const turn = new Float64Array(3 * n)
  const pushes = new Float64Array(n)
  let worst = 0
  const wrap = (d: number) => d - sideMm * Math.round(d / sideMm)
  /** Moves and turns body g by a push of length λ along the direction at an arm from its middle. */
  const push = (g: number, arm: Vector, direction: Vector, length: number) => {
    const [nx, ny, nz] = direction
    const torque: Vector = [arm[1] * nz - arm[2] * ny, arm[2] * nx - arm[0] * nz, arm[0] * ny - arm[1] * nx]
    const inertia = grains[g]!.body.gyrationMm2
    for (let k = 0; k < 3; k++) {
      move[3 * g + k]! += length * direction[k]!
      turn[3 * g + k]! += (length * torque[k]!) / inertia
    }
    pushes[g]!++
  }
  const yielding = (g: number, arm: Vector, [nx, ny, nz]: Vector) => {
    const t0 = arm[1] * nz - arm[2] * ny
    const t1 = arm[2] * nx - arm[0] * nz
    const t2 = arm[0] * ny - arm[1] * nx
    return 1 + (t0 * t0 + t1 * t1 + t2 * t2) / grains[g]!.body.gyrationMm2
  }
  const armOf = (i: number): Vector => {
    const grain = grains[owner[i]!]!
    return [wrap(x[i]! - grain.u), wrap(y[i]! - grain.v), z[i]! - grain.w]
  }
  const cells = Math.max(1, Math.floor(sideMm / (2 * largest)))
  const layers = Math.max(1, Math.floor(depthMm / (2 * largest)))
  const place = (value: number) => ((Math.floor((value / sideMm) * cells) % cells) + cells) % cells
  const layer = (value: number) =>
    Math.min(layers - 1, Math.max(0, Math.floor((value / depthMm + 0.5) * layers)))
  const head = new Int32Array(cells * cells * layers).fill(-1)
  const next = new Int32Array(balls)
  // Cells around one, each once even where the tile is only one or two cells wide.
  const around = Array.from({ length: cells }, (_, c) => [
    ...new Set([(c + cells - 1) % cells, c, (c + 1) % cells]),
  ])
  for (let i = 0; i < balls; i++) {
    const [cu, cv, cw] = [place(x[i]!), place(y[i]!), layer(z[i]!)]
    for (const a of around[cu]!) {
      for (const b of around[cv]!) {
        for (let c = Math.max(0, cw - 1); c <= Math.min(layers - 1, cw + 1); c++) {
          for (let j = head[(a * cells + b) * layers + c]!; j >= 0; j = next[j]!) {
            if (owner[i] === owner[j]) continue
            const [dx, dy, dz] = [wrap(x[i]! - x[j]!), wrap(y[i]! - y[j]!), z[i]! - z[j]!]
            const reach = radius[i]! + radius[j]!
            const squared = dx * dx + dy * dy + dz * dz
            if (squared >= reach * reach || squared === 0) continue
            const distance = Math.sqrt(squared)
            const overlap = reach - distance
            worst = Math.max(worst, overlap)
            const direction: Vector = [dx / distance, dy / distance, dz / distance]
            const [one, other] = [armOf(i), armOf(j)]
            const length =
              overlap / (yielding(owner[i]!, one, direction) + yielding(owner[j]!, other, direction))
            push(owner[i]!, one, direction, length)
            push(owner[j]!, other, direction, -length)
          }
        }
      }
    }
    const cell = (cu * cells + cv) * layers + cw
    next[i] = head[cell]!
    head[cell] = i
    const beyond = Math.abs(z[i]!) + radius[i]! - depthMm / 2
    if (beyond > 0) {
      worst = Math.max(worst, beyond)
      const direction: Vector = [0, 0, z[i]! > 0 ? -1 : 1]
      const arm = armOf(i)
      push(owner[i]!, arm, direction, beyond / yielding(owner[i]!, arm, direction))
    }
  }
  grains.forEach((grain, g) => {
    if (pushes[g] === 0) return
    const most = LARGEST_MOVE * Math.max(...grain.body.radiusMm)
    const cut = (value: number) => Math.max(-most, Math.min(most, FOLLOW * value))
    grain.u = (((grain.u + cut(move[3 * g]!)) % sideMm) + sideMm) % sideMm
    grain.v = (((grain.v + cut(move[3 * g + 1]!)) % sideMm) + sideMm) % sideMm
    grain.w += cut(move[3 * g + 2]!)
    grain.axes = turned(
      grain.axes,
      FOLLOW * turn[3 * g]!,
      FOLLOW * turn[3 * g + 1]!,
      FOLLOW * turn[3 * g + 2]!,
    )
  })
  return worst
}

const LARGEST_TURN = 0.2

/** Axes turned about a vector by its length (radians, at most a fifth), made square again. */
function turned([long, middle]: Axes, x: number, y: number, z: number): Axes {
  const size = Math.hypot(x, y, z)
  const k = size > LARGEST_TURN ? LARGEST_TURN / size : 1
  const by = (a: Vector): Vector => [
    a[0] + k * (y * a[2] - z * a[1]),
    a[1] + k * (z * a[0] - x * a[2]),
    a[2] + k * (x * a[1] - y * a[0]),
  ]
  return squareAxes(by(long), by(middle))
}

function squareAxes(long: Vector, middle: Vector): Axes {
  const l = unit(long)
  const along = middle[0] * l[0] + middle[1] * l[1] + middle[2] * l[2]
  const m = unit([middle[0] - along * l[0], middle[1] - along * l[1], middle[2] - along * l[2]])
  return [l, m, [l[1] * m[2] - l[2] * m[1], l[2] * m[0] - l[0] * m[2], l[0] * m[1] - l[1] * m[0]]]
}

function unit([x, y, z]: Vector): Vector {
  const length = Math.hypot(x, y, z) || 1
  return [x / length, y / length, z / length]
}
