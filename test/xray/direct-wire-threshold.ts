import { besselJ1 } from '../../src/numerics/bessel.ts'
import { gaussLegendre } from '../../src/numerics/gauss-legendre.ts'
import { tailPoint } from '../../src/numerics/tail-point.ts'
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
 * The point of a clean bed's tail for the filter of a wire, written out: the line filter across the wire times a
 * rectangle of the gathered length along it, every grain met slice by slice at every place of a fine net, nine sizes
 * of the piece and nine of the grain.
 */
const STEPS = Array.from({ length: 9 }, (_, i) => -2.4 + 0.6 * i)
const NORMAL = STEPS.map((u) => Math.exp((-u * u) / 2))
const TOTAL = NORMAL.reduce((a, b) => a + b)
const SPREAD = STEPS.map((u, i) => ({ ratio: Math.exp(0.2 * u), weight: NORMAL[i]! / TOTAL }))

const ACROSS_PER_PIXEL = 4
const AROUND_MM = 8
const SLICES = 120

function frequenciesOf(nyquist: number, grainMm: number) {
  const knots = [0, 0.05, 0.1, 0.2, 0.4, 0.7, nyquist, ...grainKnots.map((x) => x / grainMm)]
  const edges = [...new Set(knots.filter((f) => f <= nyquist))].sort((a, b) => a - b)
  const at: number[] = []
  const weight: number[] = []
  for (let e = 0; e + 1 < edges.length; e++) {
    const width = edges[e + 1]! - edges[e]!
    const rule = gaussLegendre(Math.ceil(6 + 120 * width))
    rule.nodes.forEach((x, q) => {
      at.push(edges[e]! + (width * (x + 1)) / 2)
      weight.push((width / 2) * rule.weights[q]!)
    })
  }
  return { at, weight }
}

export function wireThresholdDirect(
  channels: Channels,
  pack: PackInBeam,
  imaging: Imaging,
  object: DirectObject,
  gatheredMm: number,
  sizeMm: number,
  tail: number,
  normalPoint: number,
): number {
  const n = channels.count
  const D = pack.grainMm
  const f = frequenciesOf(1 / (2 * imaging.objectPixelMm), D)
  const inverses = f.at.map((fi) => {
    const k = new Float64Array(n * n)
    noiseMatrix(k, noiseAt(fi, pack, imaging), channels, pack, imaging)
    invertSymmetric(k, n)
    return k
  })
  const largest = (SPREAD.at(-1)!.ratio * D) / 2
  const dx = imaging.objectPixelMm / ACROSS_PER_PIXEL
  const across = Array.from({ length: Math.ceil((largest + AROUND_MM) / dx) }, (_, i) => (i + 0.5) * dx)
  const waves = across.map((x) => f.at.map((fi) => Math.cos(2 * Math.PI * fi * x)))
  const dy = imaging.objectPixelMm / ACROSS_PER_PIXEL
  let sum = 0
  for (const piece of SPREAD) {
    const s = transformDirect(channels, imaging, object, sizeMm * piece.ratio, f.at)
    let power = 0
    let share = 0
    const filter = f.at.map((fi, q) => {
      let wt = 0
      for (let i = 0; i < n; i++) {
        let w = 0
        for (let j = 0; j < n; j++) w += inverses[q]![i * n + j]! * s[q * n + j]!
        power += f.weight[q]! * w * s[q * n + i]!
        wt += w * channels.foodMu[i]!
      }
      const onGrain = wt * modulationTransfer(fi, imaging.objectPixelMm, imaging.blurPixels)
      share += f.weight[q]! * onGrain ** 2 * imaging.textureScale * noiseAt(fi, pack, imaging).grain
      return f.weight[q]! * onGrain
    })
    share /= power
    // Lines left by slices of half chord ρ, in equal steps up to the largest.
    const lines = Array.from({ length: SLICES + 1 }, (_, j) => {
      const rho = (j * largest) / SLICES
      const slice = f.at.map((fi, q) => (filter[q]! * rho * besselJ1(2 * Math.PI * fi * rho)) / fi)
      return waves.map((wave) => wave.reduce((total, c, q) => total + c * slice[q]!, 0))
    })
    const answers: number[] = []
    const numbers: number[] = []
    for (const grain of SPREAD) {
      const radius = (D * grain.ratio) / 2
      const perMm2 = (grain.weight * pack.packing * pack.pathMm) / ((Math.PI * (2 * radius) ** 3) / 6)
      const rule = gaussLegendre(24)
      const rows = Math.ceil((radius + gatheredMm / 2) / dy)
      for (let m = 0; m < rows; m++) {
        const y = (m + 0.5) * dy
        const from = Math.max(-radius, y - gatheredMm / 2)
        const to = Math.min(radius, y + gatheredMm / 2)
        if (to <= from) continue
        const row = across.map(() => 0)
        rule.nodes.forEach((node, k) => {
          const inside = from + ((to - from) * (node + 1)) / 2
          const place = (Math.sqrt(radius ** 2 - inside ** 2) / largest) * SLICES
          const low = Math.min(SLICES - 1, Math.floor(place))
          const weight = ((to - from) / 2) * rule.weights[k]!
          for (let i = 0; i < row.length; i++)
            row[i]! += weight * (lines[low]![i]! * (low + 1 - place) + lines[low + 1]![i]! * (place - low))
        })
        answers.push(...row)
        numbers.push(...row.map(() => 4 * perMm2 * dx * dy))
      }
    }
    const square = answers.reduce((total, h, i) => total + numbers[i]! * h * h, 0)
    const scale = Math.sqrt(share / square)
    const noise = {
      answers: Float64Array.from(answers),
      numbers: Float64Array.from(numbers),
      count: answers.length,
      scale,
    }
    sum += piece.weight * tailPoint(noise, tail, normalPoint)
  }
  return sum
}
