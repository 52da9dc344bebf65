import { besselJ0 } from './bessel.ts'

const STEP = 1 / 128
const LARGEST = 512
let table: Float64Array | null = null

/** J0 tabulated for x >= 0, linear in steps of 1/128 (error below 8e-6); beyond 512 computed. */
export function tabulatedJ0(): (x: number) => number {
  table ??= Float64Array.from({ length: LARGEST / STEP + 2 }, (_, i) => besselJ0(i * STEP))
  const values = table
  return (x) => {
    if (x >= LARGEST) return besselJ0(x)
    const position = x / STEP
    const i = position | 0
    const low = values[i]!
    return low + (position - i) * (values[i + 1]! - low)
  }
}
