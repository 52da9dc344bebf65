/** Lengths, factors and rotations of one transform. */
export interface Plan {
  readonly n: number
  readonly radices: readonly number[]
  readonly cosine: Float64Array
  readonly sine: Float64Array
}

/** One pass of a transform (sign 1 forwards, −1 backwards): `length` is what is left of the sequence, `stride` the distance between its members. */
export type Pass = (
  plan: Plan,
  sign: number,
  length: number,
  stride: number,
  xr: Float64Array,
  xi: Float64Array,
  yr: Float64Array,
  yi: Float64Array,
) => void

const pass2: Pass = (plan, sign, length, stride, xr, xi, yr, yi) => {
  const m = length / 2
  const turn = plan.n / length
  for (let p = 0; p < m; p++) {
    const wr = plan.cosine[p * turn]!
    const wi = sign * plan.sine[p * turn]!
    const a = stride * p
    const b = stride * (p + m)
    const to = stride * 2 * p
    for (let q = 0; q < stride; q++) {
      const ar = xr[a + q]!
      const ai = xi[a + q]!
      const br = xr[b + q]!
      const bi = xi[b + q]!
      yr[to + q] = ar + br
      yi[to + q] = ai + bi
      const dr = ar - br
      const di = ai - bi
      yr[to + stride + q] = dr * wr - di * wi
      yi[to + stride + q] = dr * wi + di * wr
    }
  }
}

const pass4: Pass = (plan, sign, length, stride, xr, xi, yr, yi) => {
  const m = length / 4
  const turn = plan.n / length
  for (let p = 0; p < m; p++) {
    const w1r = plan.cosine[p * turn]!
    const w1i = sign * plan.sine[p * turn]!
    const w2r = plan.cosine[2 * p * turn]!
    const w2i = sign * plan.sine[2 * p * turn]!
    const w3r = plan.cosine[3 * p * turn]!
    const w3i = sign * plan.sine[3 * p * turn]!
    const from = stride * p
    const step = stride * m
    const to = stride * 4 * p
    for (let q = 0; q < stride; q++) {
      const a = from + q
      const b = a + step
      const c = b + step
      const d = c + step
      const sumR = xr[a]! + xr[c]!
      const sumI = xi[a]! + xi[c]!
      const difR = xr[a]! - xr[c]!
      const difI = xi[a]! - xi[c]!
      const crossR = xr[b]! + xr[d]!
      const crossI = xi[b]! + xi[d]!
      const quarterR = sign * (xi[b]! - xi[d]!)
      const quarterI = -sign * (xr[b]! - xr[d]!)
      const o = to + q
      yr[o] = sumR + crossR
      yi[o] = sumI + crossI
      const e1r = difR + quarterR
      const e1i = difI + quarterI
      yr[o + stride] = e1r * w1r - e1i * w1i
      yi[o + stride] = e1r * w1i + e1i * w1r
      const e2r = sumR - crossR
      const e2i = sumI - crossI
      yr[o + 2 * stride] = e2r * w2r - e2i * w2i
      yi[o + 2 * stride] = e2r * w2i + e2i * w2r
      const e3r = difR - quarterR
      const e3i = difI - quarterI
      yr[o + 3 * stride] = e3r * w3r - e3i * w3i
      yi[o + 3 * stride] = e3r * w3i + e3i * w3r
    }
  }
}

const SIN_60 = Math.sqrt(3) / 2

const pass3: Pass = (plan, sign, length, stride, xr, xi, yr, yi) => {
  const m = length / 3
  const turn = plan.n / length
  const tilt = sign * SIN_60
  for (let p = 0; p < m; p++) {
    const w1r = plan.cosine[p * turn]!
    const w1i = sign * plan.sine[p * turn]!
    const w2r = plan.cosine[2 * p * turn]!
    const w2i = sign * plan.sine[2 * p * turn]!
    const step = stride * m
    const to = stride * 3 * p
    for (let q = 0; q < stride; q++) {
      const a = stride * p + q
      const b = a + step
      const c = b + step
      const sumR = xr[b]! + xr[c]!
      const sumI = xi[b]! + xi[c]!
      const sideR = tilt * (xi[b]! - xi[c]!)
      const sideI = -tilt * (xr[b]! - xr[c]!)
      const middleR = xr[a]! - sumR / 2
      const middleI = xi[a]! - sumI / 2
      const o = to + q
      yr[o] = xr[a]! + sumR
      yi[o] = xi[a]! + sumI
      const e1r = middleR + sideR
      const e1i = middleI + sideI
      yr[o + stride] = e1r * w1r - e1i * w1i
      yi[o + stride] = e1r * w1i + e1i * w1r
      const e2r = middleR - sideR
      const e2i = middleI - sideI
      yr[o + 2 * stride] = e2r * w2r - e2i * w2i
      yi[o + 2 * stride] = e2r * w2i + e2i * w2r
    }
  }
}

/** The passes by radix. */
export const PASSES = new Map<number, Pass>([
  [2, pass2],
  [3, pass3],
  [4, pass4],
])
