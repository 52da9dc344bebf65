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
const TOUCHING = 0.05
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
  const balls = ballsOf(grains)
  let worst = 0
  for (let sweep = 0; sweep < mostSweeps; sweep++) {
    worst = pushApart(grains, balls, sideMm, depthMm)
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

/** The balls of a bed in one row of numbers each, and whose they are: where grain g begins is first[g]. */
interface Balls {
  readonly first: Int32Array
  readonly owner: Int32Array
  readonly x: Float64Array
  readonly y: Float64Array
  readonly z: Float64Array
  readonly radius: Float64Array
  readonly next: Int32Array
  readonly move: Float64Array
  readonly turn: Float64Array
  readonly pushes: Float64Array
  readonly gyration: Float64Array
}

function ballsOf(grains: readonly LyingGrain[]): Balls {
  const balls = grains.reduce((sum, { body }) => sum + body.at.length, 0)
  const numbers = (length: number) => new Float64Array(length)
  const n = grains.length
  const [first, owner, radius] = [new Int32Array(n), new Int32Array(balls), numbers(balls)]
  let filled = 0
  grains.forEach(({ body }, g) => {
    first[g] = filled
    for (const r of body.radiusMm) {
      owner[filled] = g
      radius[filled++] = r
    }
  })
  return {
    first,
    owner,
    radius,
    x: numbers(balls),
    y: numbers(balls),
    z: numbers(balls),
    next: new Int32Array(balls),
    move: numbers(3 * n),
    turn: numbers(3 * n),
    pushes: numbers(n),
    gyration: Float64Array.from(grains, ({ body }) => body.gyrationMm2),
  }
}

/** Where every ball is now. */
function place(grains: readonly LyingGrain[], { first, x, y, z }: Balls): void {
  grains.forEach(({ body, axes: [a, b, c], u, v, w }, g) => {
    for (let k = 0, i = first[g]!; k < body.at.length; k++, i++) {
      const [p, q, s] = body.at[k]!
      x[i] = u + p * a[0] + q * b[0] + s * c[0]
      y[i] = v + p * a[1] + q * b[1] + s * c[1]
      z[i] = w + p * a[2] + q * b[2] + s * c[2]
    }
  })
}

/** One sweep: every pair of overlapping balls of two bodies pushes both, by moving and by turning. Gives the worst overlap. */
function pushApart(grains: readonly LyingGrain[], balls: Balls, sideMm: number, depthMm: number): number {
  const { owner, x, y, z, radius, next, move, turn, pushes, gyration } = balls
  place(grains, balls)
  move.fill(0)
  turn.fill(0)
  pushes.fill(0)
  const largest = radius.reduce((most, r) => Math.max(most, r), 0)
  let worst = 0
  const wrap = (d: number) => d - sideMm * Math.round(d / sideMm)
  /** How far a body yields to a push along (nx, ny, nz) on its ball i, per length: it moves and it turns. */
  const yielding = (i: number, nx: number, ny: number, nz: number) => {
    const g = owner[i]!
    const grain = grains[g]!
    const [ax, ay, az] = [wrap(x[i]! - grain.u), wrap(y[i]! - grain.v), z[i]! - grain.w]
    const t0 = ay * nz - az * ny
    const t1 = az * nx - ax * nz
    const t2 = ax * ny - ay * nx
    return 1 + (t0 * t0 + t1 * t1 + t2 * t2) / gyration[g]!
  }
  /** Moves and turns the body of ball i by a push of a length along (nx, ny, nz). */
  const push = (i: number, nx: number, ny: number, nz: number, length: number) => {
    const g = owner[i]!
    const grain = grains[g]!
    const [ax, ay, az] = [wrap(x[i]! - grain.u), wrap(y[i]! - grain.v), z[i]! - grain.w]
    const inertia = gyration[g]!
    move[3 * g]! += length * nx
    move[3 * g + 1]! += length * ny
    move[3 * g + 2]! += length * nz
    turn[3 * g]! += (length * (ay * nz - az * ny)) / inertia
    turn[3 * g + 1]! += (length * (az * nx - ax * nz)) / inertia
    turn[3 * g + 2]! += (length * (ax * ny - ay * nx)) / inertia
    pushes[g]!++
  }
  const cells = Math.max(1, Math.floor(sideMm / (2 * largest)))
  const layers = Math.max(1, Math.floor(depthMm / (2 * largest)))
  const cellOf = (value: number) => ((Math.floor((value / sideMm) * cells) % cells) + cells) % cells
  const layer = (value: number) =>
    Math.min(layers - 1, Math.max(0, Math.floor((value / depthMm + 0.5) * layers)))
  const head = new Int32Array(cells * cells * layers).fill(-1)
  // Cells around one, each once even where the tile is only one or two cells wide.
  const around = Array.from({ length: cells }, (_, c) => [
    ...new Set([(c + cells - 1) % cells, c, (c + 1) % cells]),
  ])
  const half = sideMm / 2
  for (let i = 0; i < owner.length; i++) {
    const [xi, yi, zi, ri, mine] = [x[i]!, y[i]!, z[i]!, radius[i]!, owner[i]!]
    const [cu, cv, cw] = [cellOf(xi), cellOf(yi), layer(zi)]
    const [lowest, highest] = [Math.max(0, cw - 1), Math.min(layers - 1, cw + 1)]
    for (const a of around[cu]!) {
      for (const b of around[cv]!) {
        for (let c = lowest; c <= highest; c++) {
          for (let j = head[(a * cells + b) * layers + c]!; j >= 0; j = next[j]!) {
            if (owner[j] === mine) continue
            const reach = ri + radius[j]!
            const dz = zi - z[j]!
            if (dz >= reach || dz <= -reach) continue
            let dx = xi - x[j]!
            if (dx > half || dx < -half) dx = wrap(dx)
            if (dx >= reach || dx <= -reach) continue
            let dy = yi - y[j]!
            if (dy > half || dy < -half) dy = wrap(dy)
            const squared = dx * dx + dy * dy + dz * dz
            if (squared >= reach * reach || squared === 0) continue
            const distance = Math.sqrt(squared)
            const overlap = reach - distance
            if (overlap > worst) worst = overlap
            const [nx, ny, nz] = [dx / distance, dy / distance, dz / distance]
            const length = overlap / (yielding(i, nx, ny, nz) + yielding(j, nx, ny, nz))
            push(i, nx, ny, nz, length)
            push(j, nx, ny, nz, -length)
          }
        }
      }
    }
    const cell = (cu * cells + cv) * layers + cw
    next[i] = head[cell]!
    head[cell] = i
    const beyond = Math.abs(zi) + ri - depthMm / 2
    if (beyond > 0) {
      worst = Math.max(worst, beyond)
      const up = zi > 0 ? -1 : 1
      push(i, 0, 0, up, beyond / yielding(i, 0, 0, up))
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
