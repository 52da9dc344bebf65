import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { assessXray } from '../../src/xray/assess.ts'
import type { XrayFinding } from '../../src/xray/assessment.ts'
import { briefOf, type Case, foods, layers, materialsToFind } from './arbitrary.ts'

const caseOf: fc.Arbitrary<Case> = fc.record({
  food: fc.constantFrom(...foods),
  heightMm: fc.double({ min: 15, max: 110, noNaN: true }),
  speedMPerMin: fc.double({ min: 5, max: 60, noNaN: true }),
  pixelMm: fc.constantFrom(0.4, 0.8, 1.2),
  kV: fc.integer({ min: 35, max: 120 }),
  layers: fc.constantFrom(...layers),
  material: fc.constantFrom(...materialsToFind),
  shape: fc.constantFrom('sphere', 'wire', 'flake'),
  placement: fc.constantFrom('inside', 'outside'),
  falseRejectsPerPack: fc.constantFrom(0.01, 0.001, 0.0001),
})

function findingOf(one: Case): XrayFinding {
  const parsed = parseBrief(briefOf(one))
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return assessXray({
    machine: parsed.brief.equipment[0] as XrayMachine,
    point: parsed.brief.points[0]!,
    contaminants: parsed.brief.contaminants,
    prefix: 'case',
  }).findings[0]!
}

/** Null (not findable) counts as larger than any size; the search closes in to 1e-5. */
const order = (mm: number | null) => mm ?? Number.POSITIVE_INFINITY
const notSmaller = (worse: number | null, better: number | null) => order(worse) >= order(better) * (1 - 1e-4)

const runs = { numRuns: 40, seed: 8 }

describe('what makes a pack harder never makes the best possible size smaller', () => {
  it('a thicker product', () => {
    fc.assert(
      fc.property(caseOf, fc.double({ min: 1.02, max: 1.8, noNaN: true }), (one, factor) => {
        const thick = findingOf({ ...one, heightMm: one.heightMm * factor }).bestMm
        expect(notSmaller(thick, findingOf(one).bestMm)).toBe(true)
      }),
      runs,
    )
  })

  it('a faster belt', () => {
    fc.assert(
      fc.property(caseOf, fc.double({ min: 1.05, max: 3, noNaN: true }), (one, factor) => {
        const fast = findingOf({ ...one, speedMPerMin: one.speedMPerMin * factor }).bestMm
        expect(notSmaller(fast, findingOf(one).bestMm)).toBe(true)
      }),
      runs,
    )
  })

  it('fewer false rejects', () => {
    fc.assert(
      fc.property(caseOf, (one) => {
        const strict = findingOf({ ...one, falseRejectsPerPack: 1e-6 }).bestMm
        expect(notSmaller(strict, findingOf(one).bestMm)).toBe(true)
      }),
      runs,
    )
  })
})

describe('sizes keep their order', () => {
  it('best ≤ expected ≤ cautious, half ≤ expected ≤ sure', () => {
    fc.assert(
      fc.property(caseOf, (one) => {
        const f = findingOf(one)
        expect(notSmaller(f.expectedMm, f.bestMm)).toBe(true)
        expect(notSmaller(f.cautiousMm, f.expectedMm)).toBe(true)
        expect(notSmaller(f.expectedMm, f.halfMm)).toBe(true)
        expect(notSmaller(f.sureMm, f.expectedMm)).toBe(true)
      }),
      runs,
    )
  })

  it('outside the food a denser object of the same stuff and shape is never harder to find', () => {
    const ladder = ['pe', 'ptfe', 'aluminium', 'titanium', 'ss316'] as const
    fc.assert(
      fc.property(caseOf, fc.integer({ min: 0, max: ladder.length - 2 }), (one, i) => {
        const at = (material: string) => findingOf({ ...one, placement: 'outside', material }).bestMm
        expect(notSmaller(at(ladder[i]!), at(ladder[i + 1]!))).toBe(true)
      }),
      runs,
    )
  })
})
