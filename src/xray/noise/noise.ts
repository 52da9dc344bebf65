import type { Channels, PackInBeam } from '../detector/channels.ts'
import { grainNoisePower, unevennessNoisePower } from './texture.ts'

/** What the noise of an image depends on beside the channels. */
export interface Imaging {
  /** a, mm. */
  readonly objectPixelMm: number
  readonly blurPixels: number
  /** Factor on the hard-sphere grain noise (1 for the ideal observer). */
  readonly textureScale: number
  /** κ: share of the food's texture that differs between channels because composition varies. */
  readonly compositionResidual: number
}

/** Presampling MTF of aperture and blur at f in 1/mm: |sinc(f·a)|·exp(−2(π·f·blur·a)²). */
export function modulationTransfer(f: number, objectPixelMm: number, blurPixels: number): number {
  const x = Math.PI * f * objectPixelMm
  const aperture = x < 1e-9 ? 1 : Math.abs(Math.sin(x) / x)
  return aperture * Math.exp(-2 * (Math.PI * f * blurPixels * objectPixelMm) ** 2)
}

export type NoiseKind = 'photon' | 'electronics' | 'grain' | 'unevenness' | 'packaging'
const ALL_KINDS: ReadonlySet<NoiseKind> = new Set([
  'photon',
  'electronics',
  'grain',
  'unevenness',
  'packaging',
])

/** What the noise at one frequency is made from. */
export interface NoiseAt {
  /** MTF². */
  readonly seen: number
  /** Grain noise power of the pack, mm⁴ (texture scale 1). */
  readonly grain: number
  /** Noise power of a thickness that varies by 1 mm, mm⁴. */
  readonly unevenness: number
}

export function noiseAt(f: number, pack: PackInBeam, imaging: Imaging): NoiseAt {
  return {
    seen: modulationTransfer(f, imaging.objectPixelMm, imaging.blurPixels) ** 2,
    grain: pack.grainMm > 0 ? grainNoisePower(f, pack.grainMm, pack.packing, pack.pathMm) : 0,
    unevenness: unevennessNoisePower(f, 1),
  }
}

/**
 * Noise matrix K of the channels, row by row in `into` (count × count, mm²):
 * K_ij = T·MTF²·t_i·t_j + Σ_parts n·U·MTF²·t_i·t_j + δ_ij(q_i + T·MTF²(κ·t_i)²).
 * `kinds` leaves only some sources in (to split the noise); all by default.
 */
export function noiseMatrix(
  into: Float64Array,
  at: NoiseAt,
  channels: Channels,
  pack: PackInBeam,
  imaging: Imaging,
  kinds: ReadonlySet<NoiseKind> = ALL_KINDS,
): void {
  const n = channels.count
  const has = (kind: NoiseKind) => kinds === ALL_KINDS || kinds.has(kind)
  let texture = 0
  if (has('grain')) texture += imaging.textureScale * at.grain
  if (has('unevenness')) texture += (pack.packing * pack.unevennessMm) ** 2 * at.unevenness
  const seen = texture * at.seen
  const residual = imaging.compositionResidual ** 2
  for (let i = 0; i < n; i++) {
    const ti = channels.foodMu[i]!
    for (let j = 0; j <= i; j++) {
      let k = seen * ti * channels.foodMu[j]!
      if (has('packaging')) {
        for (let p = 0; p < pack.parts.length; p++) {
          const part = pack.parts[p]!
          if (part.unevennessMm === 0) continue
          const power = part.crossings * part.unevennessMm ** 2 * at.unevenness * at.seen
          k += power * channels.partMu[p]![i]! * channels.partMu[p]![j]!
        }
      }
      if (i === j) {
        k += seen * residual * ti * ti
        if (has('photon')) k += channels.photonNoise[i]!
        if (has('electronics')) k += channels.readNoise[i]!
      }
      into[i * n + j] = k
      into[j * n + i] = k
    }
  }
}

/** {@link noiseMatrix} as a sum of three constant matrices: K = MTF²·(grain·perGrain + unevenness·perUnevenness) + white. */
export interface NoiseParts {
  readonly perGrain: readonly number[]
  readonly perUnevenness: readonly number[]
  readonly white: readonly number[]
}

export function noiseParts(channels: Channels, pack: PackInBeam, imaging: Imaging): NoiseParts {
  const part = new Float64Array(channels.count ** 2)
  const of = (at: NoiseAt, kinds?: ReadonlySet<NoiseKind>) => {
    noiseMatrix(part, at, channels, pack, imaging, kinds)
    return [...part]
  }
  return {
    perGrain: of({ seen: 1, grain: 1, unevenness: 0 }, GRAIN),
    perUnevenness: of({ seen: 1, grain: 0, unevenness: 1 }, THICKNESSES),
    white: of({ seen: 1, grain: 0, unevenness: 0 }),
  }
}
const GRAIN: ReadonlySet<NoiseKind> = new Set(['grain'])
const THICKNESSES: ReadonlySet<NoiseKind> = new Set(['unevenness', 'packaging'])

/** Inverse of a small symmetric positive definite matrix (row by row), in place, by Cholesky factors. */
export function invertSymmetric(matrix: Float64Array, n: number): void {
  if (n === 1) {
    matrix[0] = 1 / matrix[0]!
    return
  }
  if (n === 2) {
    const [a, b, , d] = matrix as unknown as [number, number, number, number]
    const determinant = a * d - b * b
    matrix[0] = d / determinant
    matrix[1] = -b / determinant
    matrix[2] = -b / determinant
    matrix[3] = a / determinant
    return
  }
  const lower = new Float64Array(n * n)
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * n + j]!
      for (let k = 0; k < j; k++) sum -= lower[i * n + k]! * lower[j * n + k]!
      lower[i * n + j] = i === j ? Math.sqrt(sum) : sum / lower[j * n + j]!
    }
  }
  const column = new Float64Array(n)
  for (let c = 0; c < n; c++) {
    for (let i = 0; i < n; i++) {
      let sum = i === c ? 1 : 0
      for (let k = 0; k < i; k++) sum -= lower[i * n + k]! * column[k]!
      column[i] = sum / lower[i * n + i]!
    }
    for (let i = n - 1; i >= 0; i--) {
      let sum = column[i]!
      for (let k = i + 1; k < n; k++) sum -= lower[k * n + i]! * column[k]!
      column[i] = sum / lower[i * n + i]!
    }
    for (let i = 0; i < n; i++) matrix[i * n + c] = column[i]!
  }
}
