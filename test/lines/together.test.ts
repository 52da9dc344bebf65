import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Coverage } from '../../src/lines/together/smallest-set.ts'
import { WorstProducts } from '../../src/lines/together/worst.ts'

const machines = ['a', 'b', 'c', 'd'].map((key, burden) => ({ key, burden }))
const product = fc.array(fc.subarray(machines.map(({ key }) => key)), { minLength: 1, maxLength: 3 })

describe('the smallest set of machines', () => {
  it('meets everything in as many products as any three do, and no smaller or cheaper set does as well', () => {
    fc.assert(
      fc.property(fc.array(product, { maxLength: 12 }), (all) => {
        const coverage = new Coverage()
        for (const one of all) coverage.note(one)
        const set = coverage.smallestSet(machines)
        const keys = set.map(({ key }) => key)
        const met = (some: readonly string[]) =>
          all.filter((one) => one.every((by) => by.some((key) => some.includes(key)))).length
        expect(coverage.metBy(keys)).toBe(met(keys))
        expect(coverage.asking).toBe(all.length)
        for (const left of machines)
          expect(met(keys)).toBeGreaterThanOrEqual(
            met(machines.filter((m) => m !== left).map(({ key }) => key)),
          )
        for (const out of keys) {
          const fewer = keys.filter((key) => key !== out)
          expect(coverage.sizesMetBy(fewer)).toBeLessThan(coverage.sizesMetBy(keys))
        }
      }),
      { numRuns: 200 },
    )
  })
})

describe('the worst product', () => {
  const piece = { material: 'glass', shape: 'sphere', lengthMm: null, faceMm2: null, placement: 'inside' }
  it('is the one whose size cannot be promised, then the one with the largest', () => {
    const worst = new WorstProducts()
    const sizes: [number | null, number | null][] = [
      [2, 1],
      [3, 1],
      [null, 1.5],
      [5, 4],
    ]
    sizes.forEach(([promisedMm, expectedMm], row) => {
      const meets = promisedMm === 2 ? ('yes' as const) : ('no' as const)
      worst.note({ ...piece, row, title: '', askedMm: 2, promisedMm, expectedMm, equipment: null, meets })
    })
    expect(worst.all).toMatchObject([{ row: 2, promisedMm: null, met: 1, asked: 4 }])
  })
})
