import { PASSES, type Plan } from './fft-passes.ts'

/**
 * Discrete Fourier transform of lengths made of the factors 2, 3 and 4, without reordering at the end
 * (self-sorting form of T. G. Stockham 1966, AFIPS 28:229; as in Van Loan 1992, Computational Frameworks for
 * the FFT). Sign −i forwards, +i backwards; neither direction divides by the length.
 */
function radicesOf(n: number): number[] {
  const radices: number[] = []
  let rest = n
  for (const radix of [4, 2, 3]) {
    while (rest % radix === 0) {
      radices.push(radix)
      rest /= radix
    }
  }
  if (n < 1 || rest !== 1)
    throw new RangeError(`a transform length must be a product of 2 and 3; ${n} was given`)
  return radices
}

const plans = new Map<number, Plan>()

function planOf(n: number): Plan {
  let plan = plans.get(n)
  if (!plan) {
    const angle = (k: number) => (-2 * Math.PI * k) / n
    plan = {
      n,
      radices: radicesOf(n),
      cosine: Float64Array.from({ length: n }, (_, k) => Math.cos(angle(k))),
      sine: Float64Array.from({ length: n }, (_, k) => Math.sin(angle(k))),
    }
    plans.set(n, plan)
  }
  return plan
}

/** Smallest length of at least n that is a product of 2 and 3. */
export function fastLength(n: number): number {
  let length = Math.max(1, Math.ceil(n))
  for (; ; length++) {
    let rest = length
    for (const radix of [2, 3]) while (rest % radix === 0) rest /= radix
    if (rest === 1) return length
  }
}

/** Transforms `lanes` sequences at once, interleaved: member p of lane q stands at p·lanes + q. In place. */
function transformLanes(
  re: Float64Array,
  im: Float64Array,
  n: number,
  lanes: number,
  sign: number,
  spareRe: Float64Array,
  spareIm: Float64Array,
): void {
  const plan = planOf(n)
  let [xr, xi, yr, yi] = [re, im, spareRe, spareIm]
  let length = n
  let stride = lanes
  for (const radix of plan.radices) {
    PASSES.get(radix)!(plan, sign, length, stride, xr, xi, yr, yi)
    ;[xr, xi, yr, yi] = [yr, yi, xr, xi]
    length /= radix
    stride *= radix
  }
  if (xr !== re) {
    re.set(xr.subarray(0, n * lanes))
    im.set(xi.subarray(0, n * lanes))
  }
}

/** Transform of one complex sequence, in place. */
export function fft(re: Float64Array, im: Float64Array, backwards = false): void {
  const n = re.length
  transformLanes(re, im, n, 1, backwards ? -1 : 1, new Float64Array(n), new Float64Array(n))
}

/** Sequences transformed together: enough to keep the inner loops long, few enough to stay in the cache. */
const LANES = 8

/** Transform of a complex picture held row by row (columns × rows numbers), in place. */
export function fft2d(
  re: Float64Array,
  im: Float64Array,
  columns: number,
  rows: number,
  backwards = false,
): void {
  const sign = backwards ? -1 : 1
  const space = Array.from({ length: 4 }, () => new Float64Array(LANES * Math.max(columns, rows)))
  const [laneRe, laneIm, spareRe, spareIm] = space as [Float64Array, Float64Array, Float64Array, Float64Array]
  for (let first = 0; first < columns; first += LANES) {
    const lanes = Math.min(LANES, columns - first)
    for (let p = 0; p < rows; p++) {
      const from = p * columns + first
      for (let q = 0; q < lanes; q++) {
        laneRe[p * lanes + q] = re[from + q]!
        laneIm[p * lanes + q] = im[from + q]!
      }
    }
    transformLanes(laneRe, laneIm, rows, lanes, sign, spareRe, spareIm)
    for (let p = 0; p < rows; p++) {
      const from = p * columns + first
      for (let q = 0; q < lanes; q++) {
        re[from + q] = laneRe[p * lanes + q]!
        im[from + q] = laneIm[p * lanes + q]!
      }
    }
  }
  for (let first = 0; first < rows; first += LANES) {
    const lanes = Math.min(LANES, rows - first)
    for (let q = 0; q < lanes; q++) {
      const from = (first + q) * columns
      for (let p = 0; p < columns; p++) {
        laneRe[p * lanes + q] = re[from + p]!
        laneIm[p * lanes + q] = im[from + p]!
      }
    }
    transformLanes(laneRe, laneIm, columns, lanes, sign, spareRe, spareIm)
    for (let q = 0; q < lanes; q++) {
      const from = (first + q) * columns
      for (let p = 0; p < columns; p++) {
        re[from + p] = laneRe[p * lanes + q]!
        im[from + p] = laneIm[p * lanes + q]!
      }
    }
  }
}

/**
 * Transforms of two real pictures from one complex transform: given the first as real and the second as
 * imaginary part, re and im become the first's transform, and the second's is returned.
 */
export function fftOfTwo(
  re: Float64Array,
  im: Float64Array,
  columns: number,
  rows: number,
): { re: Float64Array; im: Float64Array } {
  fft2d(re, im, columns, rows)
  const secondRe = new Float64Array(re.length)
  const secondIm = new Float64Array(re.length)
  for (let row = 0; row < rows; row++) {
    const mirrorRow = row === 0 ? 0 : rows - row
    for (let column = 0; column < columns; column++) {
      const at = row * columns + column
      const mirror = mirrorRow * columns + (column === 0 ? 0 : columns - column)
      if (mirror < at) continue
      const [a, b, c, d] = [re[at]!, im[at]!, re[mirror]!, im[mirror]!]
      re[at] = (a + c) / 2
      im[at] = (b - d) / 2
      re[mirror] = (a + c) / 2
      im[mirror] = (d - b) / 2
      secondRe[at] = (b + d) / 2
      secondIm[at] = (c - a) / 2
      secondRe[mirror] = (b + d) / 2
      secondIm[mirror] = (a - c) / 2
    }
  }
  return { re: secondRe, im: secondIm }
}
