import { besselJ0, besselJ1 } from '../../src/numerics/bessel.ts'
import { gaussLegendre } from '../../src/numerics/gauss-legendre.ts'
import type { Channels, PackInBeam } from '../../src/xray/detector/channels.ts'
import {
  type Imaging,
  invertSymmetric,
  modulationTransfer,
  noiseAt,
  noiseMatrix,
} from '../../src/xray/noise/noise.ts'
import { grainKnots } from '../../src/xray/noise/texture.ts'

/**
 * The observer written out as its equations stand, slowly and without short cuts: every energy bin, every
 * frequency. The fast form of the program is held against it.
 */
export interface DirectObject {
  shape: 'sphere' | 'wire' | 'flake'
  /** The object itself, 1/mm per energy bin. */
  muPerMm: Float64Array
  /** Food as packed, 1/mm per energy bin, and how much there is to displace, mm; null on the pack. */
  food: { muPerMm: Float64Array; depthMm: number } | null
  /** Wires: length, and how much of it a filter gathers at least, mm. */
  lengthMm?: number
  gatheredMm?: number
  faceMm2?: number
}

function signalDrop(channels: Channels, c: number, object: DirectObject, chordMm: number): number {
  let sum = 0
  const w = channels.weights[c]!
  const displacedMm = object.food ? Math.min(chordMm, object.food.depthMm) : 0
  for (let i = 0; i < channels.bins; i++) {
    const food = object.food ? object.food.muPerMm[i]! * displacedMm : 0
    sum -= w[i]! * Math.expm1(food - object.muPerMm[i]! * chordMm)
  }
  return sum
}

/** Transform of one perfect object with the MTF: one value per frequency and channel. */
export function transformDirect(
  channels: Channels,
  imaging: Imaging,
  object: DirectObject,
  sizeMm: number,
  frequencies: readonly number[],
): Float64Array {
  const n = channels.count
  const result = new Float64Array(n * frequencies.length)
  const r = sizeMm / 2
  const swings = (2 * Math.max(...frequencies) * r) | 0
  const radial = gaussLegendre(20 + 3 * swings)
  const depth = object.food?.depthMm ?? Number.POSITIVE_INFINITY
  const bend = depth < sizeMm ? Math.acos(depth / sizeMm) : 0
  const spans = bend > 0 ? [[0, bend] as const, [bend, Math.PI / 2] as const] : [[0, Math.PI / 2] as const]
  const mtf = frequencies.map((f) => modulationTransfer(f, imaging.objectPixelMm, imaging.blurPixels))
  if (object.shape === 'flake') {
    const radius = Math.sqrt(object.faceMm2! / Math.PI)
    for (let c = 0; c < n; c++) {
      const drop = signalDrop(channels, c, object, sizeMm)
      frequencies.forEach((f, q) => {
        result[q * n + c] = (mtf[q]! * drop * radius * besselJ1(2 * Math.PI * f * radius)) / f
      })
    }
    return result
  }
  for (const [from, to] of spans) {
    for (let j = 0; j < radial.nodes.length; j++) {
      const theta = from + ((to - from) * (radial.nodes[j]! + 1)) / 2
      const rho = r * Math.sin(theta)
      const chord = sizeMm * Math.cos(theta)
      const width = ((to - from) / 2) * radial.weights[j]! * (chord / 2)
      const drops = Array.from({ length: n }, (_, c) => width * signalDrop(channels, c, object, chord))
      for (let q = 0; q < frequencies.length; q++) {
        const phase = 2 * Math.PI * frequencies[q]! * rho
        const wave = object.shape === 'sphere' ? 2 * Math.PI * rho * besselJ0(phase) : 2 * Math.cos(phase)
        for (let c = 0; c < n; c++) result[q * n + c]! += drops[c]! * wave * mtf[q]!
      }
    }
  }
  return result
}

/** d′ of one perfect object. */
export function dPrimeOfOneDirect(
  channels: Channels,
  pack: PackInBeam,
  imaging: Imaging,
  object: DirectObject,
  sizeMm: number,
): number {
  const n = channels.count
  const nyquist = 1 / (2 * imaging.objectPixelMm)
  const extentMm = object.shape === 'flake' ? 2 * Math.sqrt(object.faceMm2! / Math.PI) : sizeMm
  const knots = [0, 1 / 20, nyquist]
  if (pack.grainMm > 0) for (const x of grainKnots) knots.push(x / pack.grainMm)
  const edges = [...new Set(knots.filter((f) => f <= nyquist))].sort((a, b) => a - b)
  const along = gaussLegendre(8)
  const frequencies: number[] = []
  const weights: number[] = []
  for (let e = 0; e + 1 < edges.length; e++) {
    const pieces = Math.max(1, Math.ceil((edges[e + 1]! - edges[e]!) * 2 * extentMm))
    const width = (edges[e + 1]! - edges[e]!) / pieces
    for (let piece = 0; piece < pieces; piece++) {
      for (let q = 0; q < 8; q++) {
        frequencies.push(edges[e]! + width * (piece + (along.nodes[q]! + 1) / 2))
        weights.push((width / 2) * along.weights[q]!)
      }
    }
  }
  const s = transformDirect(channels, imaging, object, sizeMm, frequencies)
  const k = new Float64Array(n * n)
  const gathered = Math.min(object.lengthMm ?? 0, Math.max(object.gatheredMm ?? 0, sizeMm))
  let sum = 0
  frequencies.forEach((f, q) => {
    noiseMatrix(k, noiseAt(f, pack, imaging), channels, pack, imaging)
    invertSymmetric(k, n)
    let form = 0
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) form += s[q * n + i]! * k[i * n + j]! * s[q * n + j]!
    sum += weights[q]! * form * (object.shape === 'wire' ? 2 * gathered : 2 * Math.PI * f)
  })
  return Math.sqrt(sum)
}

/** d′ of a kind of piece: of round ones the geometric mean over the spread of their size. */
export function dPrimeDirect(
  channels: Channels,
  pack: PackInBeam,
  imaging: Imaging,
  object: DirectObject,
  sizeMm: number,
): number {
  const one = (d: number) => dPrimeOfOneDirect(channels, pack, imaging, object, d)
  if (object.shape === 'flake') return one(sizeMm)
  const outer = Math.exp(0.2 * Math.sqrt(3))
  return Math.exp(
    Math.log(one(sizeMm / outer)) / 6 + (2 * Math.log(one(sizeMm))) / 3 + Math.log(one(sizeMm * outer)) / 6,
  )
}

/** Last crossing of the needed d′ on a fine log grid, refined by bisection; null when never reached at the top. */
export function directSize(
  dPrime: (sizeMm: number) => number,
  needed: number,
  limitMm: number,
): number | null {
  if (!(dPrime(limitMm) >= needed)) return null
  let above = limitMm
  for (let d = limitMm / 1.04; d > 0.002; d /= 1.04) {
    if (dPrime(d) < needed) {
      let low = d
      let high = above
      for (let k = 0; k < 30; k++) {
        const middle = Math.sqrt(low * high)
        if (dPrime(middle) >= needed) high = middle
        else low = middle
      }
      return Math.sqrt(low * high)
    }
    above = d
  }
  return above
}
