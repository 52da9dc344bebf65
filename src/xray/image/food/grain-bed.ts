import { depthAtMm, type View } from '../pack/view.ts'
import type { Random } from './random.ts'

/** Centres and equal-volume radii of the grains of a pack, mm; w is measured along the beam from mid-depth. */
export interface GrainBed {
  readonly count: number
  readonly u: Float64Array
  readonly v: Float64Array
  readonly w: Float64Array
  readonly radius: Float64Array
  /** Share of its radius a grain keeps from the edge of the picture's outline, 0 to 1. */
  readonly edge: Float64Array
}

/** Sweeps of pushing overlapping grains apart; large beds get fewer (their many layers average out). */
function sweepsFor(count: number): number {
  return Math.round(Math.min(60, Math.max(8, 150_000 / count)))
}

/**
 * Grains thrown into one box: one at a packing of 0.60, which holds density even; more where the packing is
 * loose, because a loose bed clumps. Chosen so that round grains show the grain pattern of the hard-sphere
 * table at 0.60 and 0.45 (test/xray/image/grain-bed.test.ts).
 */
function grainsPerBox(packing: number): number {
  return Math.max(1, Math.min(GRAINS_PER_LOOSE_BOX, GRAINS_PER_LOOSE_BOX ** ((0.6 - packing) / 0.15)))
}
const GRAINS_PER_LOOSE_BOX = 12

/**
 * Grains in a pack: thrown at random into equal boxes, then overlapping ones pushed apart as spheres of
 * their own volume until they hardly touch (overlap removal, after Jodrey & Tory 1985, Phys. Rev. A 32:2347).
 * grainMm: diameter of the sphere of mean volume; sizeSpread: standard deviation over mean of the diameters.
 */
export function packGrains(
  view: View,
  packing: number,
  grainMm: number,
  sizeSpread: number,
  random: Random,
): GrainBed {
  const sigma = Math.sqrt(Math.log(1 + sizeSpread ** 2))
  const perBox = grainsPerBox(packing)
  const boxSide = Math.cbrt((perBox * Math.PI * grainMm ** 3) / 6 / packing)
  const share = (mm: number) => Math.max(1, Math.round(mm / boxSide))
  const [nu, nv, nw] = [share(view.uMm), share(view.vMm), share(view.depthMm)] as const
  const wanted = (view.uMm * view.vMm * view.depthMm) / (nu * nv * nw) / (boxSide ** 3 / perBox)
  const u: number[] = []
  const v: number[] = []
  const w: number[] = []
  const radius: number[] = []
  let owed = 0
  for (let box = 0; box < nu * nv * nw; box++) {
    const i = Math.floor(box / (nv * nw))
    const j = Math.floor(box / nw) % nv
    const k = box % nw
    for (owed += wanted; owed >= 0.5; owed--) {
      const atU = ((i + random.uniform()) / nu) * view.uMm
      const atV = ((j + random.uniform()) / nv) * view.vMm
      const depth = depthAtMm(view, atU, atV)
      const height = (k + random.uniform()) / nw - 0.5
      const size = Math.exp(sigma * random.normal() - 1.5 * sigma * sigma)
      if (random.uniform() * view.depthMm > depth) continue
      u.push(atU)
      v.push(atV)
      w.push(height * depth)
      radius.push((grainMm / 2) * size)
    }
  }
  const bed = {
    count: u.length,
    u: Float64Array.from(u),
    v: Float64Array.from(v),
    w: Float64Array.from(w),
    radius: Float64Array.from(radius),
    edge: Float64Array.from(radius, () => random.uniform()),
  }
  for (let sweep = sweepsFor(bed.count); sweep > 0; sweep--) pushApart(view, bed)
  return bed
}

/** One sweep over all pairs of neighbours: each of two overlapping spheres gives way by half the overlap. */
function pushApart(view: View, bed: GrainBed): void {
  const { count, u, v, w, radius } = bed
  let largest = 0
  for (let i = 0; i < count; i++) largest = Math.max(largest, radius[i]!)
  const side = 2 * largest
  const cells = (mm: number) => Math.max(1, Math.floor(mm / side))
  const nu = cells(view.uMm)
  const nv = cells(view.vMm)
  const nw = cells(view.depthMm)
  const place = (x: number, mm: number, n: number) => Math.min(n - 1, Math.max(0, Math.floor((x / mm) * n)))
  const head = new Int32Array(nu * nv * nw).fill(-1)
  const next = new Int32Array(count)
  for (let i = 0; i < count; i++) {
    const cu = place(u[i]!, view.uMm, nu)
    const cv = place(v[i]!, view.vMm, nv)
    const cw = place(w[i]! + view.depthMm / 2, view.depthMm, nw)
    for (let a = Math.max(0, cu - 1); a <= Math.min(nu - 1, cu + 1); a++) {
      for (let b = Math.max(0, cv - 1); b <= Math.min(nv - 1, cv + 1); b++) {
        for (let c = Math.max(0, cw - 1); c <= Math.min(nw - 1, cw + 1); c++) {
          for (let j = head[(a * nv + b) * nw + c]!; j >= 0; j = next[j]!) separate(bed, i, j)
        }
      }
    }
    const cell = (cu * nv + cv) * nw + cw
    next[i] = head[cell]!
    head[cell] = i
  }
  for (let i = 0; i < count; i++) keepInside(view, bed, i)
}

function separate(bed: GrainBed, i: number, j: number): void {
  const { u, v, w, radius } = bed
  const du = u[i]! - u[j]!
  const dv = v[i]! - v[j]!
  const dw = w[i]! - w[j]!
  const reach = radius[i]! + radius[j]!
  const squared = du * du + dv * dv + dw * dw
  if (squared >= reach * reach || squared === 0) return
  const distance = Math.sqrt(squared)
  const push = (reach - distance) / (2 * distance)
  u[i]! += du * push
  v[i]! += dv * push
  w[i]! += dw * push
  u[j]! -= du * push
  v[j]! -= dv * push
  w[j]! -= dw * push
}

/** Grains stay inside the food's edge, each by its own share of its radius, so that the edge is ragged. */
function keepInside(view: View, bed: GrainBed, i: number): void {
  const { u, v, w, radius, edge } = bed
  const r = edge[i]! * Math.min(radius[i]!, view.uMm / 2, view.vMm / 2)
  u[i] = Math.min(view.uMm - r, Math.max(r, u[i]!))
  v[i] = Math.min(view.vMm - r, Math.max(r, v[i]!))
  const room = Math.max(0, depthAtMm(view, u[i]!, v[i]!) / 2 - radius[i]!)
  w[i] = Math.min(room, Math.max(-room, w[i]!))
}
