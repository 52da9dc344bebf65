import { DEGREE, STEPS_PER_UNIT, TABLE_END } from './chord-basis.ts'

/**
 * ∫ Sᵀ K⁻¹ S of a round object for one and for two channels, the two cases that carry nearly all the work:
 * the general form in observer.ts, written out so that nothing is stored and nothing is looped over seven.
 * basis: table of the object's kind; coefficients: u¹ … u⁷ per channel; step: table steps per unit frequency.
 */
export function onePower(
  basis: Float64Array,
  coefficients: Float64Array,
  frequencies: Float64Array,
  power: Float64Array,
  inverse: Float64Array,
  step: number,
): number {
  const c1 = coefficients[0]!
  const c2 = coefficients[1]!
  const c3 = coefficients[2]!
  const c4 = coefficients[3]!
  const c5 = coefficients[4]!
  const c6 = coefficients[5]!
  const c7 = coefficients[6]!
  const end = TABLE_END * STEPS_PER_UNIT
  let sum = 0
  for (let q = 0; q < frequencies.length; q++) {
    const position = step * frequencies[q]!
    if (position >= end) break
    const row = position | 0
    const share = position - row
    const i = row * DEGREE
    const below =
      c1 * basis[i]! +
      c2 * basis[i + 1]! +
      c3 * basis[i + 2]! +
      c4 * basis[i + 3]! +
      c5 * basis[i + 4]! +
      c6 * basis[i + 5]! +
      c7 * basis[i + 6]!
    const above =
      c1 * basis[i + 7]! +
      c2 * basis[i + 8]! +
      c3 * basis[i + 9]! +
      c4 * basis[i + 10]! +
      c5 * basis[i + 11]! +
      c6 * basis[i + 12]! +
      c7 * basis[i + 13]!
    const s = below + share * (above - below)
    sum += power[q]! * inverse[q]! * s * s
  }
  return sum
}

/** See {@link onePower}; inverse holds four numbers per frequency. */
export function twoPower(
  basis: Float64Array,
  coefficients: Float64Array,
  frequencies: Float64Array,
  power: Float64Array,
  inverse: Float64Array,
  step: number,
): number {
  const a1 = coefficients[0]!
  const a2 = coefficients[1]!
  const a3 = coefficients[2]!
  const a4 = coefficients[3]!
  const a5 = coefficients[4]!
  const a6 = coefficients[5]!
  const a7 = coefficients[6]!
  const b1 = coefficients[7]!
  const b2 = coefficients[8]!
  const b3 = coefficients[9]!
  const b4 = coefficients[10]!
  const b5 = coefficients[11]!
  const b6 = coefficients[12]!
  const b7 = coefficients[13]!
  const end = TABLE_END * STEPS_PER_UNIT
  let sum = 0
  for (let q = 0; q < frequencies.length; q++) {
    const position = step * frequencies[q]!
    if (position >= end) break
    const row = position | 0
    const share = position - row
    const i = row * DEGREE
    let low = basis[i]!
    let v = low + share * (basis[i + 7]! - low)
    let a = a1 * v
    let b = b1 * v
    low = basis[i + 1]!
    v = low + share * (basis[i + 8]! - low)
    a += a2 * v
    b += b2 * v
    low = basis[i + 2]!
    v = low + share * (basis[i + 9]! - low)
    a += a3 * v
    b += b3 * v
    low = basis[i + 3]!
    v = low + share * (basis[i + 10]! - low)
    a += a4 * v
    b += b4 * v
    low = basis[i + 4]!
    v = low + share * (basis[i + 11]! - low)
    a += a5 * v
    b += b5 * v
    low = basis[i + 5]!
    v = low + share * (basis[i + 12]! - low)
    a += a6 * v
    b += b6 * v
    low = basis[i + 6]!
    v = low + share * (basis[i + 13]! - low)
    a += a7 * v
    b += b7 * v
    const k = 4 * q
    sum += power[q]! * (inverse[k]! * a * a + 2 * inverse[k + 1]! * a * b + inverse[k + 3]! * b * b)
  }
  return sum
}
