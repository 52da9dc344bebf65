import { besselJ0 } from '../../src/numerics/bessel.ts'
import { gaussLegendre } from '../../src/numerics/gauss-legendre.ts'
import { normalUpperTail } from '../../src/numerics/normal.ts'
import type { Channels, PackInBeam } from '../../src/xray/detector/channels.ts'
import {
  type Imaging,
  invertSymmetric,
  modulationTransfer,
  noiseAt,
  noiseMatrix,
} from '../../src/xray/noise/noise.ts'
import { grainKnots } from '../../src/xray/noise/texture.ts'
import { type DirectObject, transformDirect } from './direct-observer.ts'

/**
 * The threshold in grain written out as its equations stand: every frequency, every radius, nine sizes of the
 * piece and nine of the grain, the exponential as it is.
 */
export interface DirectThreshold {
  /** Of the middle size of the piece. */
  grainShare: number
  skewness: number
  threshold: number
}

const STEPS = Array.from({ length: 9 }, (_, i) => -2.4 + 0.6 * i)
const NORMAL = STEPS.map((u) => Math.exp((-u * u) / 2))
const TOTAL = NORMAL.reduce((a, b) => a + b)
const SPREAD = STEPS.map((u, i) => ({ ratio: Math.exp(0.2 * u), weight: NORMAL[i]! / TOTAL }))
const LARGEST_GRAIN = 1.62

function panels(edges: number[], widest: number): { at: number[]; weight: number[] } {
  const rule = gaussLegendre(8)
  const at: number[] = []
  const weight: number[] = []
  for (let e = 0; e + 1 < edges.length; e++) {
    const pieces = Math.ceil((edges[e + 1]! - edges[e]!) / widest)
    const width = (edges[e + 1]! - edges[e]!) / pieces
    for (let p = 0; p < pieces; p++)
      for (let q = 0; q < 8; q++) {
        at.push(edges[e]! + width * (p + (rule.nodes[q]! + 1) / 2))
        weight.push((width / 2) * rule.weights[q]!)
      }
  }
  return { at, weight }
}

export function thresholdDirect(
  channels: Channels,
  pack: PackInBeam,
  imaging: Imaging,
  object: DirectObject,
  sizeMm: number,
  tail: number,
): DirectThreshold {
  const n = channels.count
  const nyquist = 1 / (2 * imaging.objectPixelMm)
  const D = pack.grainMm
  const reach = 4 * Math.max(LARGEST_GRAIN * D, sizeMm, 4)
  const edges = [0, 1 / 20, nyquist, ...grainKnots.map((x) => x / D)].filter((f) => f <= nyquist)
  const f = panels(
    [...new Set(edges)].sort((a, b) => a - b),
    0.6 / reach,
  )
  const r = panels([0, reach], 0.6 / nyquist)
  const bessel = r.at.map((ri) => f.at.map((fi) => besselJ0(2 * Math.PI * fi * ri)))
  const inverses = f.at.map((fi) => {
    const k = new Float64Array(n * n)
    noiseMatrix(k, noiseAt(fi, pack, imaging), channels, pack, imaging)
    invertSymmetric(k, n)
    return k
  })
  let sum = 0
  let middle = { grainShare: 0, skewness: 0 }
  for (const piece of SPREAD) {
    const s = transformDirect(channels, imaging, object, sizeMm * piece.ratio, f.at)
    let power = 0
    let share = 0
    const seen = f.at.map((fi, q) => {
      const mtf = modulationTransfer(fi, imaging.objectPixelMm, imaging.blurPixels)
      let wt = 0
      for (let i = 0; i < n; i++) {
        let w = 0
        for (let j = 0; j < n; j++) w += inverses[q]![i * n + j]! * s[q * n + j]!
        power += f.weight[q]! * 2 * Math.PI * fi * w * s[q * n + i]!
        wt += w * channels.foodMu[i]!
      }
      const grain = imaging.textureScale * noiseAt(fi, pack, imaging).grain
      share += f.weight[q]! * 2 * Math.PI * fi * (wt * mtf) ** 2 * grain
      return wt * mtf
    })
    share /= power
    const shadows = SPREAD.map((grain) => {
      const size = D * grain.ratio
      const perArea = (pack.packing * pack.pathMm) / ((Math.PI * size ** 3) / 6)
      const through = seen.map((v, q) => {
        const k = Math.PI * f.at[q]! * size
        const chord = (4 * Math.PI * (size / 2) ** 3 * (Math.sin(k) - k * Math.cos(k))) / k ** 3
        return f.weight[q]! * 2 * Math.PI * f.at[q]! * v * chord
      })
      const h = bessel.map((row) => row.reduce((total, j, q) => total + j * through[q]!, 0))
      return { weight: grain.weight * perArea, h }
    })
    let square = 0
    for (const { weight, h } of shadows)
      h.forEach((v, i) => {
        square += weight * r.weight[i]! * 2 * Math.PI * r.at[i]! * v * v
      })
    // Grains in a bed are not independent: their shadows together bring the variance of the grain's noise power.
    const scale = Math.sqrt(share / square)
    for (const { h } of shadows) for (let i = 0; i < h.length; i++) h[i]! *= scale
    const lambda = (order: 0 | 1 | 2, x: number) => {
      let total = (1 - share) * (order === 0 ? (x * x) / 2 : order === 1 ? x : 1)
      for (const { weight, h } of shadows)
        h.forEach((v, i) => {
          const e = Math.exp(x * v)
          const term = order === 0 ? e - 1 - x * v : order === 1 ? v * (e - 1) : v * v * e
          total += weight * r.weight[i]! * 2 * Math.PI * r.at[i]! * term
        })
      return total
    }
    const tailAt = (x: number) => {
      const t = lambda(1, x)
      const root = Math.sqrt(2 * (x * t - lambda(0, x)))
      const u = x * Math.sqrt(lambda(2, x))
      const density = Math.exp((-root * root) / 2) / Math.sqrt(2 * Math.PI)
      return { t, tail: normalUpperTail(root) + density * (1 / u - 1 / root) }
    }
    let [low, high] = [1, 12]
    for (let k = 0; k < 40; k++) {
      const x = (low + high) / 2
      if (tailAt(x).tail > tail) low = x
      else high = x
    }
    sum += piece.weight * tailAt(low).t
    if (Math.abs(piece.ratio - 1) < 1e-9) {
      let third = 0
      for (const { weight, h } of shadows)
        h.forEach((v, i) => {
          third += weight * r.weight[i]! * 2 * Math.PI * r.at[i]! * v ** 3
        })
      middle = { grainShare: share, skewness: third }
    }
  }
  return { ...middle, threshold: sum }
}
