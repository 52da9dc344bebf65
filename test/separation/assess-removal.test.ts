import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { ContaminantInput, PointInput, ProductInput } from '../../src/contract/index.ts'
import { removalSchema } from '../../src/contract/index.ts'
import { electricalSources } from '../../src/reference/electrical.ts'
import { materials, sources } from '../../src/reference/index.ts'
import { separationSources } from '../../src/reference/separation.ts'
import type { RemovalMachine } from '../../src/separation/assessment.ts'
import { removalRows } from '../../src/separation/removal-rows.ts'
import { assess, magnet, separator, sieve, sorter } from './removal-case.ts'

const foods = [
  'hazelnut',
  'rice',
  'flour',
  'potato_crisps',
  'cheddar',
  'honey',
  'soup',
  'potato',
  'beef_mince',
]
const foreign = [...materials.values()].filter((m) => !['food', 'gas'].includes(m.kind)).map((m) => m.id)
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const machine: fc.Arbitrary<RemovalMachine> = fc.oneof(
  fc.constant(sieve()),
  size(0.1, 60).map((mesh) => sieve(mesh)),
  fc.constant(magnet),
  size(0.05, 2).map((surfaceTesla): RemovalMachine => ({ id: 'm', family: 'magnet', surfaceTesla })),
  fc
    .tuple(size(0.05, 2), size(2, 300))
    .map(([surfaceTesla, reachMm]): RemovalMachine => ({ id: 'm', family: 'magnet', surfaceTesla, reachMm })),
  size(0.1, 3).map((pixel) => sorter(pixel)),
  size(1, 3).map((ratio) => separator(ratio)),
)
const contaminant: fc.Arbitrary<ContaminantInput> = fc
  .record(
    {
      material: fc.constantFrom(...foreign),
      shape: fc.constantFrom('sphere' as const, 'wire' as const, 'flake' as const),
      placement: fc.constantFrom('inside' as const, 'outside' as const),
      mustFindMm: size(0.1, 9),
      lengthMm: size(10, 100),
      faceMm2: size(90, 900),
    },
    { requiredKeys: ['material', 'shape', 'lengthMm', 'faceMm2'] },
  )
  .map(({ lengthMm, faceMm2, ...rest }) => ({
    ...rest,
    ...(rest.shape === 'wire' ? { lengthMm } : {}),
    ...(rest.shape === 'flake' ? { faceMm2 } : {}),
  }))
const point: fc.Arbitrary<PointInput> = fc.record(
  {
    stage: fc.constantFrom('loose' as const, 'free-fall' as const, 'pumped' as const, 'packed' as const),
    heightMm: size(61, 200),
    widthMm: size(100, 900),
    lengthMm: size(100, 900),
    speedMPerMin: size(1, 300),
    kgPerHour: size(10, 20000),
  },
  { requiredKeys: ['stage', 'heightMm', 'widthMm', 'lengthMm'] },
)
const product: fc.Arbitrary<ProductInput> = fc.record({
  food: fc.constantFrom(...foods),
  ironMgPerKg: fc.constantFrom(0, 100),
})

describe('what every removal assessment keeps', () => {
  it('shares in order, one finding per contaminant, a trail that ends, sources that exist', () => {
    fc.assert(
      fc.property(
        machine,
        product,
        point,
        fc.array(contaminant, { minLength: 1, maxLength: 3 }),
        (m, f, p, c) => {
          const done = assess({ machine: m, product: f, point: p, contaminants: c })
          expect(done.findings.map((found) => found.contaminant)).toEqual(c.map((_, i) => i))
          const ids = new Set(done.calculations.map((step) => step.id))
          expect(ids.size).toBe(done.calculations.length)
          for (const step of done.calculations) {
            expect(step.id.startsWith('p0.test.')).toBe(true)
            for (const input of step.inputs) expect(ids.has(input), `${step.id} ← ${input}`).toBe(true)
            for (const id of step.sources)
              expect(separationSources.has(id) || sources.has(id) || electricalSources.has(id), id).toBe(true)
            const ends = step.inputs.length > 0 || step.sources.length > 0 || step.formula.length > 0
            expect(ends, step.id).toBe(true)
            expect(`${step.value} ${step.label} ${step.formula}`).not.toMatch(/NaN|undefined|Infinity/)
          }
          for (const found of done.findings) {
            const [low, high] = found.shareRemoved
            expect(low).toBeGreaterThanOrEqual(0)
            expect(low).toBeLessThanOrEqual(high)
            expect(high).toBeLessThanOrEqual(found.ceiling)
            expect(found.ceiling).toBeLessThan(1)
            expect(found.because.length).toBeGreaterThan(10)
            const words = `${found.because} ${found.condition} ${found.neverRemoves}`
            expect(words).not.toMatch(/NaN|undefined|Infinity|null/)
            if (found.applicable) {
              expect(ids.has(found.calculation)).toBe(true)
              expect(found.condition.length).toBeGreaterThan(10)
              expect(found.neverRemoves.length).toBeGreaterThan(10)
            } else {
              expect([low, high, found.ceiling]).toEqual([0, 0, 0])
            }
            if (found.goodProductLost) {
              expect(found.goodProductLost[0]).toBeGreaterThanOrEqual(0)
              expect(found.goodProductLost[0]).toBeLessThanOrEqual(found.goodProductLost[1])
              expect(found.goodProductLostUnit).not.toBe('')
            }
          }
          for (const row of removalRows(done)) expect(removalSchema.safeParse(row).success).toBe(true)
        },
      ),
      { numRuns: 250, seed: 9 },
    )
  })

  it('every share can be walked from its calculation to a source or the brief', () => {
    for (const m of [sieve(), magnet, sorter(), separator()]) {
      const { findings, calculations } = assess({ machine: m })
      const byId = new Map(calculations.map((step) => [step.id, step]))
      const seen = new Set<string>()
      const walk = (id: string): void => {
        if (seen.has(id)) return
        seen.add(id)
        const step = byId.get(id)!
        if (step.inputs.length === 0)
          expect(step.sources.length > 0 || /brief|machine|listed/.test(step.formula), id).toBe(true)
        step.inputs.forEach(walk)
      }
      walk(findings[0]!.calculation)
      expect(seen.size).toBeGreaterThan(5)
    }
  })

  it('nothing is taken out of a pack', () => {
    for (const m of [sieve(), magnet, sorter(), separator()]) {
      const done = assess({ machine: m, point: { stage: 'packed' } })
      expect(done.applicable).toBe(false)
      expect(done.findings[0]!.because).toContain('pack')
      expect(removalRows(done)).toEqual([])
    }
  })

  it('a word that leaves the material open spans its members', () => {
    for (const m of [magnet, sorter(), separator()]) {
      const share = (material: string) =>
        assess({ machine: m, contaminants: [{ material, mustFindMm: 3 }] }).findings[0]!.shareRemoved
      const any = share('stainless_any')
      for (const id of materials.get('stainless_any')!.family) {
        expect(any[0]).toBeLessThanOrEqual(share(id)[0])
        expect(any[1]).toBeGreaterThanOrEqual(share(id)[1])
      }
    }
  })
})
