import type { ExposedPack } from '../pack/exposed-pack.ts'
import type { FoodCurve } from './cancel-food.ts'
import type { NoiseInverse } from './noise-inverse.ts'
import { type Kind, pixelTransfer, type Template, templateAt, templateOf } from './template.ts'

/** Share of the best possible strength a filter must keep to stand in for another (judgement). */
export const STANDS_IN = 0.8
/** The same for a first look that only has to find what stands out. */
export const STANDS_IN_ROUGHLY = 0.6
/** Sizes a filter may be made for: from the size found every second time upwards by this factor. */
const SIZE_STEP = 1.25
/** What is this many times stronger than it need be is found by a filter that does not quite fit. */
const AMPLE = 2
/** What is this many times stronger than it need be asks for no filter of its own. */
const FAR_ABOVE = 4
const WIRE_ANGLES = [0, Math.PI / 4, Math.PI / 2, (3 * Math.PI) / 4]
const SMALLEST_MM = 0.2
/** Filters go at least up to this size, mm, and up to the largest piece looked for. */
const LARGEST_MM = 5
const SIZES_TRIED = 28
/** Frequency points per axis (half plane) on which filters are compared. */
const GRID = 16

interface Sampled {
  readonly template: Template
  /** Template times MTF on the comparison grid, and K⁻¹ of it, [point][channel]. */
  readonly values: Float64Array
  readonly filter: Float64Array
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
    const { channels: n, values: inverse } = this.#inverse
    const points = this.#fu.length
    const values = new Float64Array(points * n)
    const filter = new Float64Array(points * n)
    for (let q = 0; q < points; q++) {
      for (let c = 0; c < n; c++)
        values[q * n + c] = this.#transfer[q]! * templateAt(template, c, this.#fu[q]!, this.#fv[q]!)
      const base = this.#rows[q]! * n * n
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) filter[q * n + i]! += inverse[base + i * n + j]! * values[q * n + j]!
      }
    }
    const sampled = { template, values, filter, strength: 0 }
    return { ...sampled, strength: Math.sqrt(Math.max(0, this.product(sampled, sampled))) }
  }

  /** ∬ Sᵀ K⁻¹ S′ over the pixel's frequencies. */
  product(one: Sampled, other: Sampled): number {
    const { filter } = one
    const { values } = other
    let sum = 0
    for (let i = 0; i < filter.length; i++) sum += filter[i]! * values[i]!
    return sum * this.#weight
  }

  template(curve: FoodCurve, kind: Kind, sizeMm: number, angle: number): Sampled {
    const end = Math.SQRT1_2 / this.#exposed.objectPixelMm
    return this.sample(templateOf(this.#exposed, curve, kind, sizeMm, angle, end))
  }
}

/**
 * The filters a machine would run on this picture: for every kind those of all sizes from the one it finds
 * every second time in the measured noise (strength z) up to four times that strength, four directions for
 * wires. One filter stands in for
 * another where it keeps a share of its strength or leaves it twice the strength needed; as few as possible
 * are kept, one after the other the one that stands in for most.
 */
export function chooseFilters(
  exposed: ExposedPack,
  curve: FoodCurve,
  kinds: readonly Kind[],
  inverse: NoiseInverse,
  z: number,
  standsIn = STANDS_IN,
  largestMm = LARGEST_MM,
): Template[] {
  const mostMm = Math.max(LARGEST_MM, largestMm)
  const comparison = new Comparison(exposed, inverse)
  const wanted: Sampled[] = []
  for (const kind of kinds) {
    if (kind.looksLikeVoid) continue
    const just = justFound(comparison, curve, kind, z, mostMm)
    if (just === null) continue
    const angles = kind.seen.shape === 'wire' ? WIRE_ANGLES : [0]
    for (let sizeMm = just; sizeMm <= mostMm; sizeMm *= SIZE_STEP) {
      for (const angle of angles) {
        const one = comparison.template(curve, kind, sizeMm, angle)
        if (one.strength > 0 && one.strength <= FAR_ABOVE * z) wanted.push(one)
      }
    }
  }
  const covers = wanted.map((one) =>
    wanted.map(
      (other) =>
        comparison.product(one, other) >= one.strength * Math.min(standsIn * other.strength, AMPLE * z),
    ),
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
function justFound(
  comparison: Comparison,
  curve: FoodCurve,
  kind: Kind,
  strength: number,
  largestMm: number,
): number | null {
  for (let i = 0; i < SIZES_TRIED; i++) {
    const size = SMALLEST_MM * (largestMm / SMALLEST_MM) ** (i / (SIZES_TRIED - 1))
    if (comparison.template(curve, kind, size, 0).strength >= strength) return size
  }
  return null
}
