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
  /** Object minus what it displaces, 1/mm per energy bin. */
  deltaMuPerMm: Float64Array
  /** Wires: length gathered along the wire, mm. */
  gatheredMm?: number
  faceMm2?: number
}

function signalDrop(channels: Channels, c: number, deltaMu: Float64Array, chordMm: number): number {
  let sum = 0
  const w = channels.weights[c]!
  for (let i = 0; i < channels.bins; i++) sum -= w[i]! * Math.expm1(-deltaMu[i]! * chordMm)
  return sum
}

export function dPrimeDirect(
  channels: Channels,
  pack: PackInBeam,
  imaging: Imaging,
  object: DirectObject,
  sizeMm: number,
): number {
  const n = channels.count
  const nyquist = 1 / (2 * imaging.objectPixelMm)
  const extentMm = object.shape === 'flake' ? 2 * Math.sqrt(object.faceMm2! / Math.PI) : sizeMm
  const r = sizeMm / 2
  const knots = [0, 1 / 20, nyquist]
  if (pack.grainMm > 0) for (const x of grainKnots) knots.push(x / pack.grainMm)
  const edges = [...new Set(knots.filter((f) => f <= nyquist))].sort((a, b) => a - b)
  const radialPoints = 24 + Math.ceil(0.7 * 2 * Math.PI * nyquist * r)
  const radial = gaussLegendre(radialPoints)
  const drops: Float64Array[] = []
  for (let c = 0; c < n; c++) {
    drops.push(
      radial.nodes.map((x) => {
        const theta = ((x + 1) * Math.PI) / 4
        return signalDrop(channels, c, object.deltaMuPerMm, sizeMm * Math.cos(theta))
      }),
    )
  }
  const along = gaussLegendre(8)
  const k = new Float64Array(n * n)
  const s = new Float64Array(n)
  let sum = 0
  for (let e = 0; e + 1 < edges.length; e++) {
    const pieces = Math.max(1, Math.ceil((edges[e + 1]! - edges[e]!) * 2 * extentMm))
    const width = (edges[e + 1]! - edges[e]!) / pieces
    for (let piece = 0; piece < pieces; piece++) {
      for (let q = 0; q < 8; q++) {
        const f = edges[e]! + width * (piece + (along.nodes[q]! + 1) / 2)
        const weight = (width / 2) * along.weights[q]!
        noiseMatrix(k, noiseAt(f, pack, imaging), channels, pack, imaging)
        invertSymmetric(k, n)
        const mtf = modulationTransfer(f, imaging.objectPixelMm, imaging.blurPixels)
        for (let c = 0; c < n; c++) {
          if (object.shape === 'flake') {
            const radius = extentMm / 2
            const drop = signalDrop(channels, c, object.deltaMuPerMm, sizeMm)
            s[c] = (mtf * drop * radius * besselJ1(2 * Math.PI * f * radius)) / f
            continue
          }
          let integral = 0
          for (let j = 0; j < radialPoints; j++) {
            const theta = ((radial.nodes[j]! + 1) * Math.PI) / 4
            const rho = r * Math.sin(theta)
            const kernel =
              object.shape === 'sphere'
                ? 2 * Math.PI * rho * besselJ0(2 * Math.PI * f * rho)
                : 2 * Math.cos(2 * Math.PI * f * rho)
            integral += radial.weights[j]! * (Math.PI / 4) * drops[c]![j]! * kernel * r * Math.cos(theta)
          }
          s[c] = mtf * integral
        }
        let form = 0
        for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) form += s[i]! * k[i * n + j]! * s[j]!
        sum += weight * form * (object.shape === 'wire' ? 2 * object.gatheredMm! : 2 * Math.PI * f)
      }
    }
  }
  return Math.sqrt(sum)
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
