import { type NoiseKind, noiseAt, noiseMatrix } from '../noise/noise.ts'
import { objectTransform } from './object-transform.ts'
import type { Observer } from './observer.ts'
import type { SeenObject } from './seen-object.ts'

/**
 * Shares of the noise in the observer's decision on one object, by kind; they add up to 1.
 * The decision filter K⁻¹S passes each kind of noise with its own power.
 */
export function noiseShares(
  observer: Observer,
  object: SeenObject,
  sizeMm: number,
): Record<NoiseKind, number> {
  const { frequencies, inverse, channels, pack, imaging } = observer
  const power = object.shape === 'wire' ? observer.lineWeights : observer.areaWeights
  const points = frequencies.length
  const n = channels.count
  const shares: Record<NoiseKind, number> = {
    photon: 0,
    electronics: 0,
    grain: 0,
    unevenness: 0,
    packaging: 0,
  }
  if (n === 0) return shares
  const s = objectTransform(observer, object, sizeMm)
  const filter = new Float64Array(n)
  const part = new Float64Array(n * n)
  for (let q = 0; q < points; q++) {
    const noise = noiseAt(frequencies[q]!, pack, imaging)
    const weight = power[q]!
    for (let i = 0; i < n; i++) {
      filter[i] = 0
      for (let j = 0; j < n; j++) filter[i]! += inverse[q * n * n + i * n + j]! * s[q * n + j]!
    }
    for (const kind of Object.keys(shares) as NoiseKind[]) {
      noiseMatrix(part, noise, channels, pack, imaging, new Set([kind]))
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) shares[kind] += weight * filter[i]! * part[i * n + j]! * filter[j]!
      }
    }
  }
  const total = Object.values(shares).reduce((sum, v) => sum + v, 0)
  for (const kind of Object.keys(shares) as NoiseKind[]) shares[kind] = total > 0 ? shares[kind] / total : 0
  return shares
}
