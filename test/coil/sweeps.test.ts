import { expect, test } from 'vitest'
import { assessCoil } from '../../src/coil/assess-coil.ts'
import type { Point, Product } from '../../src/contract/index.ts'
import { sweep } from '../sweep.ts'
import { jumpsIn } from '../xray/sweeps/smooth.ts'
import { sampleContaminant, samplePoint } from './sample-point.ts'

const STEPS = sweep(200, 2000)
const METALS = ['steel', 'brass', 'ss316']

/** Sizes of the three test metals at fixed frequencies, mm. */
function sizesAt(frequenciesKHz: number[], point: Partial<Point>, product: Partial<Product>) {
  return assessCoil({
    machine: { id: 'coil', family: 'coil', frequenciesKHz, use: 'together' },
    point: samplePoint(point, product),
    contaminants: METALS.map((metal) => sampleContaminant(metal)),
  }).findings.map(({ expectedMm }) => expectedMm)
}

const openingMm = (mm: number) => ({ apertureHeightMm: mm, apertureWidthMm: 2 * mm })
interface Swept {
  readonly range: readonly [number, number]
  readonly at: (value: number) => readonly [Partial<Point>, Partial<Product>]
}

const SWEPT: Readonly<Record<string, Swept>> = {
  conductivitySPerM: { range: sweep([0.0007, 0.03], [0.0006, 2]), at: (v) => [{}, { conductivitySPerM: v }] },
  opening: { range: [75, 400], at: (v) => [openingMm(v), { conductivitySPerM: 0.3 }] },
  thickness: { range: [8, 150], at: (v) => [{ heightMm: v }, { conductivitySPerM: 0.1 }] },
}

test.each(Object.entries(SWEPT))(
  `${STEPS} steps of %s make no size jump at fixed frequencies`,
  (_, { range, at }) => {
    // Wide ranges take as many steps as make each of 2 %.
    const steps = Math.max(STEPS, Math.ceil(Math.log(range[1] / range[0]) / Math.log(1.02)))
    for (const frequenciesKHz of sweep([[100]], [[100], [50, 100, 300, 850]])) {
      const rows = new Map<number, (number | null)[]>()
      const size = (value: number) => {
        const [point, product] = at(value)
        const row = rows.get(value) ?? sizesAt(frequenciesKHz, point, product)
        rows.set(value, row)
        return row
      }
      METALS.forEach((__, k) => {
        expect(jumpsIn(range, steps, 12, (value) => size(value)[k]!)).toEqual([])
      })
    }
  },
)
