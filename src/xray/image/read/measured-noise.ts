import { fft2d } from '../../../numerics/fft.ts'
import type { ReadArea } from './read-area.ts'

/**
 * Noise of a picture as measured from the picture: covariance of the channels (mm²) over rings of frequency,
 * from overlapping windowed patches (Welch 1967, IEEE Trans. Audio Electroacoust. 15:70), pattern taken as
 * alike in all directions.
 */
export interface MeasuredNoise {
  readonly channels: number
  /** Width of a ring, 1/mm; ring i is centred at i × width. */
  readonly stepPerMm: number
  readonly rings: number
  /** [ring][i][j]. */
  readonly covariance: Float64Array
}

/** Least side of a patch, mm, so that the grain's own scale is resolved (judgement). */
const PATCH_MM = 40
const SMALLEST_PATCH_PX = 32
const LOWER_SHARE = 0.25
/** Share of a patch's window that must be usable. */
const LEAST_USABLE = 0.3

/** Side of the patches in pixels: a power of two that fits the area. */
export function patchSide(area: ReadArea): number {
  const { columns, rows, pitchMm } = area.pixels
  let side = SMALLEST_PATCH_PX
  while (side * pitchMm < PATCH_MM && 2 * side <= Math.min(columns, rows)) side *= 2
  return side
}

/**
 * Measures the noise over the pixels that are usable (1). `robust` takes the lower quartile over patches instead
 * of the mean, for a picture whose pieces are not known yet (most patches may hold some), and fewer patches.
 */
export function measureNoise(area: ReadArea, usable: Uint8Array, robust: boolean): MeasuredNoise {
  const { columns, rows, pitchMm } = area.pixels
  const n = area.channels.length
  const side = patchSide(area)
  const rings = Math.round((side / 2) * Math.SQRT2) + 1
  const hann = Float64Array.from({ length: side }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / side) ** 2)
  const ringOf = new Uint16Array(side * side)
  const members = new Float64Array(rings)
  for (let y = 0, at = 0; y < side; y++) {
    for (let x = 0; x < side; x++, at++) {
      ringOf[at] = Math.round(Math.hypot(Math.min(x, side - x), Math.min(y, side - y)))
      members[ringOf[at]!]!++
    }
  }
  // One room for all patches: two channels stand in one transform, so that their number is made even.
  const window = new Float64Array(side * side)
  const pictures = Array.from({ length: n + (n % 2) }, () => new Float64Array(side * side))
  const spectra: Float64Array[] = []
  const weights: number[] = []
  const step = robust ? side : side / 2
  for (const top of starts(rows, side, step)) {
    for (const left of starts(columns, side, step)) {
      const weight = takePatch(area, usable, left, top, side, hann, window, pictures)
      if (weight === null) continue
      for (let c = 0; c < n; c += 2) fft2d(pictures[c]!, pictures[c + 1]!, side, side)
      const rows = ringSums(pictures, n, side, ringOf, rings)
      const scale = (pitchMm * pitchMm) / weight
      for (let at = 0; at < rows.length; at++) rows[at]! *= scale
      spectra.push(rows)
      weights.push(weight)
    }
  }
  if (spectra.length === 0) throw new RangeError('too little of this pack is read to measure its noise')
  const covariance = new Float64Array(rings * n * n)
  for (let ring = 0; ring < rings; ring++) {
    for (let i = 0; i < n; i++) {
      for (let j = 0; j <= i; j++) {
        const at = ring * n * n + i * n + j
        const value = over(spectra, weights, at, robust) / members[ring]!
        covariance[at] = value
        covariance[ring * n * n + j * n + i] = value
      }
    }
  }
  return { channels: n, stepPerMm: 1 / (side * pitchMm), rings, covariance }
}

/**
 * Products of the channels' transforms summed over rings, [ring][i][j ≤ i]. Two channels stand in one transform, as its
 * real and its imaginary part (the last alone where their number is odd); half of the frequencies stand for the other half.
 */
function ringSums(
  packed: readonly Float64Array[],
  n: number,
  side: number,
  ringOf: Uint16Array,
  rings: number,
): Float64Array {
  const sums = new Float64Array(rings * n * n)
  const re = new Float64Array(n + 1)
  const im = new Float64Array(n + 1)
  for (let y = 0; y < side; y++) {
    const mirrorRow = ((side - y) % side) * side
    for (let x = 0; x <= side / 2; x++) {
      const at = y * side + x
      const mirror = mirrorRow + ((side - x) % side)
      for (let c = 0; c < n; c += 2) {
        const [one, other] = [packed[c]!, packed[c + 1]!]
        const [a, b, p, q] = [one[at]!, other[at]!, one[mirror]!, other[mirror]!]
        re[c] = (a + p) / 2
        im[c] = (b - q) / 2
        re[c + 1] = (b + q) / 2
        im[c + 1] = (p - a) / 2
      }
      const twice = x === 0 || 2 * x === side ? 1 : 2
      const ring = ringOf[at]! * n * n
      for (let i = 0; i < n; i++)
        for (let j = 0; j <= i; j++) sums[ring + i * n + j]! += twice * (re[i]! * re[j]! + im[i]! * im[j]!)
    }
  }
  return sums
}

/** Where patches start along one axis: even steps of at most `step`, whatever the length. */
function starts(length: number, side: number, step: number): number[] {
  if (length <= side) return [Math.floor((length - side) / 2)]
  const steps = Math.ceil((length - side) / step)
  return Array.from({ length: steps + 1 }, (_, i) => Math.round(((length - side) * i) / steps))
}

/**
 * Fills `pictures` with a windowed patch of every channel, its own mean taken off (one more than there are channels
 * becomes empty), and gives the window's weight; null where too little is usable.
 */
function takePatch(
  area: ReadArea,
  usable: Uint8Array,
  left: number,
  top: number,
  side: number,
  hann: Float64Array,
  window: Float64Array,
  pictures: readonly Float64Array[],
): number | null {
  const { columns, rows } = area.pixels
  window.fill(0)
  let sum = 0
  let weight = 0
  for (let y = 0; y < side; y++) {
    const row = top + y
    if (row < 0 || row >= rows) continue
    for (let x = 0; x < side; x++) {
      const column = left + x
      if (column < 0 || column >= columns || usable[row * columns + column] === 0) continue
      const w = hann[x]! * hann[y]!
      window[y * side + x] = w
      sum += w
      weight += w * w
    }
  }
  if (weight < LEAST_USABLE * ((3 / 8) * side) ** 2) return null
  pictures.forEach((values, c) => {
    values.fill(0)
    const channel = area.channels[c]
    if (!channel) return
    let mean = 0
    for (let y = 0, at = 0; y < side; y++) {
      const from = (top + y) * columns + left
      for (let x = 0; x < side; x++, at++) {
        const w = window[at]!
        if (w === 0) continue
        values[at] = channel[from + x]!
        mean += w * values[at]!
      }
    }
    mean /= sum
    for (let at = 0; at < window.length; at++) values[at] = window[at]! * (values[at]! - mean)
  })
  return weight
}

function over(spectra: readonly Float64Array[], weights: readonly number[], at: number, robust: boolean) {
  if (robust) {
    const sorted = spectra.map((s) => s[at]!).sort((a, b) => a - b)
    return sorted[Math.floor(LOWER_SHARE * (sorted.length - 1))]!
  }
  let sum = 0
  let total = 0
  spectra.forEach((s, k) => {
    sum += weights[k]! * s[at]!
    total += weights[k]!
  })
  return sum / total
}
