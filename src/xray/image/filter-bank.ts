import type { FoodCurve } from './cancel-food.ts'
import type { ExposedPack } from './exposed-pack.ts'
import type { NoiseInverse } from './noise-inverse.ts'
import { type Kind, pixelTransfer, type Template, templateAt, templateOf } from './template.ts'

/** Share of the best possible strength a filter must keep to stand in for another (judgement). */
export const STANDS_IN = 0.88
/** The same for a first look that only has to find what stands out. */
export const STANDS_IN_ROUGHLY = 0.6
/** Sizes a filter is made for, as multiples of the size it can just find. */
const SIZE_STEPS = [1, 1.7, 2.9]
const WIRE_ANGLES = [0, Math.PI / 4, Math.PI / 2, (3 * Math.PI) / 4]
const SMALLEST_MM = 0.2
const LARGEST_MM = 8
const SIZES_TRIED = 28
/** Frequency points per axis (half plane) on which filters are compared. */
const GRID = 16

interface Sampled {
  readonly template: Template
  /** Template times MTF on the comparison grid, [point][channel]. */
  readonly values: Float64Array
  readonly strength: number
}

/** Comparison of templates by the noise: strength d′ and how much of it one keeps with another's filter. */
class Comparison {
  readonly #inverse: NoiseInverse
  readonly #exposed: ExposedPack
  readonly #fu: number[] = []
  readonly #fv: number[] = []
  readonly #weight: number
  readonly #rows: number[] = []
  readonly #transfer: number[] = []

  constructor(exposed: ExposedPack, inverse: NoiseInverse) {
    this.#exposed = exposed
    this.#inverse = inverse
    const a = exposed.objectPixelMm
    const step = 1 / (2 * a * GRID)
    this.#weight = 2 * step * step
    for (let i = -GRID; i < GRID; i++) {
      for (let j = 0; j < GRID; j++) {
        const fu = (i + 0.5) * step
        const fv = (j + 0.5) * step
        this.#fu.push(fu)
        this.#fv.push(fv)
        this.#transfer.push(pixelTransfer(exposed, fu) * pixelTransfer(exposed, fv))
        this.#rows.push(Math.min(inverse.steps, Math.round(Math.hypot(fu, fv) / inverse.stepPerMm)))
      }
    }
  }

  sample(template: Template): Sampled {
    const n = this.#inverse.channels
    const values = new Float64Array(this.#fu.length * n)
    for (let q = 0; q < this.#fu.length; q++) {
      for (let c = 0; c < n; c++)
        values[q * n + c] = this.#transfer[q]! * templateAt(template, c, this.#fu[q]!, this.#fv[q]!)
    }
    const sampled = { template, values, strength: 0 }
    return { ...sampled, strength: Math.sqrt(this.product(sampled, sampled)) }
  }

  /** ∬ Sᵀ K⁻¹ S′ over the pixel's frequencies. */
  product(one: Sampled, other: Sampled): number {
    const { channels: n, values: inverse } = this.#inverse
    let sum = 0
    for (let q = 0; q < this.#rows.length; q++) {
      const base = this.#rows[q]! * n * n
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++)
          sum += one.values[q * n + i]! * inverse[base + i * n + j]! * other.values[q * n + j]!
      }
    }
    return sum * this.#weight
  }

  template(curve: FoodCurve, kind: Kind, sizeMm: number, angle: number): Sampled {
    const end = Math.SQRT1_2 / this.#exposed.objectPixelMm
    return this.sample(templateOf(this.#exposed, curve, kind, sizeMm, angle, end))
  }
}

/**
 * The filters a machine would run on this picture: for every kind those of the sizes around the smallest it
 * can find in the measured noise (strength z + 1.3), four directions for wires; one filter stands in for
 * several where it keeps 88 % of their strength. At most one per kind, size and direction.
 */
export function chooseFilters(
  exposed: ExposedPack,
  curve: FoodCurve,
  kinds: readonly Kind[],
  inverse: NoiseInverse,
  z: number,
  standsIn = STANDS_IN,
): Template[] {
  const comparison = new Comparison(exposed, inverse)
  const wanted: Sampled[] = []
  for (const kind of kinds) {
    if (kind.looksLikeVoid) continue
    const just = justFound(comparison, curve, kind, z + 1.3)
    if (just === null) continue
    const angles = kind.seen.shape === 'wire' ? WIRE_ANGLES : [0]
    for (const step of SIZE_STEPS) {
      for (const angle of angles) {
        const one = comparison.template(curve, kind, Math.min(LARGEST_MM, just * step), angle)
        if (one.strength > 0) wanted.push(one)
      }
    }
  }
  const covers = wanted.map((one) =>
    wanted.map((other) => comparison.product(one, other) >= standsIn * one.strength * other.strength),
  )
  const open = new Set(wanted.keys())
  const chosen: Template[] = []
  while (open.size > 0) {
    const covered = (i: number) => [...open].filter((j) => j === i || covers[i]![j])
    const best = [...open]
      .map((i) => ({ i, covered: covered(i) }))
      .sort((a, b) => b.covered.length - a.covered.length)[0]!
    chosen.push(wanted[best.i]!.template)
    for (const j of best.covered) open.delete(j)
  }
  return chosen
}

/** Smallest size of a kind that reaches a strength in the noise, mm; null where none does. */
function justFound(comparison: Comparison, curve: FoodCurve, kind: Kind, strength: number): number | null {
  for (let i = 0; i < SIZES_TRIED; i++) {
    const size = SMALLEST_MM * (LARGEST_MM / SMALLEST_MM) ** (i / (SIZES_TRIED - 1))
    if (comparison.template(curve, kind, size, 0).strength >= strength) return size
  }
  return null
}
