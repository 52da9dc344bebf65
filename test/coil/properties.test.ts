import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { assessCoil } from '../../src/coil/assess-coil.ts'
import { COIL_PARAMETERS, type CoilParameters } from '../../src/coil/parameters.ts'
import { packagingPart, sampleContaminant, samplePoint } from './sample-point.ts'

const METALS = [
  'steel',
  'ss430',
  'ss304',
  'ss316',
  'brass',
  'aluminium',
  'copper',
  'lead',
  'carbide',
  'titanium',
]
const FREQUENCIES = [25, 50, 100, 200, 300, 500, 850, 1000]

const setting = fc.record({
  heightMm: fc.double({ min: 8, max: 250, noNaN: true }),
  widthMm: fc.double({ min: 20, max: 400, noNaN: true }),
  lengthMm: fc.double({ min: 20, max: 600, noNaN: true }),
  openingMm: fc.double({ min: 75, max: 400, noNaN: true }),
  openingRatio: fc.double({ min: 0.4, max: 4, noNaN: true }),
  conductivitySPerM: fc.oneof(fc.constant(0), fc.double({ min: 0.0005, max: 5, noNaN: true })),
  ironMgPerKg: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 500, noNaN: true })),
  falseRejectsPerPack: fc.double({ min: 1e-6, max: 0.1, noNaN: true }),
  frequenciesKHz: fc.uniqueArray(fc.constantFrom(...FREQUENCIES), { minLength: 1, maxLength: 4 }),
  material: fc.constantFrom(...METALS),
  shape: fc.constantFrom('sphere' as const, 'wire' as const, 'flake' as const),
  wrap: fc.constantFrom('none' as const, 'film' as const, 'foil' as const),
})

type Setting = typeof setting extends fc.Arbitrary<infer T> ? T : never

function assess(
  s: Setting,
  parameters: CoilParameters = COIL_PARAMETERS,
  placement: 'inside' | 'outside' = 'inside',
) {
  return assessCoil({
    machine: { id: 'coil', family: 'coil', frequenciesKHz: s.frequenciesKHz, use: 'together' },
    point: samplePoint(
      {
        heightMm: s.heightMm,
        widthMm: s.widthMm,
        lengthMm: s.lengthMm,
        apertureHeightMm: s.openingMm,
        apertureWidthMm: s.openingMm * s.openingRatio,
        falseRejectsPerPack: s.falseRejectsPerPack,
        parts: packagingPart(s.wrap),
      },
      { conductivitySPerM: s.conductivitySPerM, ironMgPerKg: s.ironMgPerKg },
    ),
    contaminants: [sampleContaminant(s.material, { shape: s.shape, lengthMm: 15, faceMm2: 30, placement })],
    parameters,
  })
}

const find = (...args: Parameters<typeof assess>) => assess(...args).findings[0]!
/** No size counts as larger than any. */
const size = (mm: number | null) => mm ?? Number.POSITIVE_INFINITY
/** Sizes are read between grid steps of 1 %; a tie may differ in the last digits. */
const notBelow = (a: number | null, b: number | null) =>
  expect(size(a)).toBeGreaterThanOrEqual(size(b) * (1 - 1e-9))

const RUNS = { numRuns: 40 }

/** A thin flake of iron is found, then missed again up to 0.3 mm: a residual that hides the thin ones changes nothing. */
const TURNED: Setting = {
  heightMm: 16.08056962131258,
  widthMm: 369.9354739539757,
  lengthMm: 208.26039325910915,
  openingMm: 302.70368744193763,
  openingRatio: 2.9999999999988,
  conductivitySPerM: 0,
  ironMgPerKg: 0,
  falseRejectsPerPack: 1e-6,
  frequenciesKHz: [850, 100],
  material: 'steel',
  shape: 'flake',
  wrap: 'film',
}

describe('for any product, opening, metal, shape and pack', () => {
  test('best ≤ expected ≤ cautious, and half ≤ found ≤ sure', () => {
    fc.assert(
      fc.property(setting, (s) => {
        const f = find(s)
        notBelow(f.expectedMm, f.bestMm)
        notBelow(f.cautiousMm, f.expectedMm)
        notBelow(f.sureMm, f.halfMm)
        for (const mm of [f.bestMm, f.expectedMm, f.cautiousMm]) {
          if (mm !== null) expect(mm).toBeLessThanOrEqual(f.limitMm + 1e-9)
        }
      }),
      RUNS,
    )
  })

  test('more noise never makes a size smaller', () => {
    fc.assert(
      fc.property(setting, fc.double({ min: 1, max: 5, noNaN: true }), (s, more) => {
        const noisy = { ...COIL_PARAMETERS, noiseM3: COIL_PARAMETERS.noiseM3 * more }
        const [quiet, loud] = [find(s), find(s, noisy)]
        notBelow(loud.bestMm, quiet.bestMm)
        notBelow(loud.expectedMm, quiet.expectedMm)
      }),
      RUNS,
    )
  })

  test('a larger residual of product and pack never makes a size smaller', () => {
    fc.assert(
      fc.property(setting, fc.double({ min: 1, max: 5, noNaN: true }), (s, more) => {
        const wider = (residual: CoilParameters['block']) => ({
          amplitude: residual.amplitude,
          phaseRad: residual.phaseRad * more,
          remainder: residual.remainder * more,
        })
        const worse = {
          ...COIL_PARAMETERS,
          block: wider(COIL_PARAMETERS.block),
          wrapper: wider(COIL_PARAMETERS.wrapper),
        }
        notBelow(find(s, worse).expectedMm, find(s).expectedMm)
      }),
      { ...RUNS, examples: [[TURNED, 1.0806747433900934]] },
    )
  })

  test('fewer false rejects never make a size smaller', () => {
    fc.assert(
      fc.property(setting, fc.double({ min: 0.001, max: 1, noNaN: true }), (s, share) => {
        const strict = find({ ...s, falseRejectsPerPack: s.falseRejectsPerPack * share })
        notBelow(strict.expectedMm, find(s).expectedMm)
        notBelow(strict.bestMm, find(s).bestMm)
      }),
      RUNS,
    )
  })

  test('a higher or wider opening never makes the best size of the same metal smaller', () => {
    fc.assert(
      fc.property(
        setting,
        fc.double({ min: 1, max: 2, noNaN: true }),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (s, higher, wider) => {
          const large = {
            ...s,
            openingMm: s.openingMm * higher,
            openingRatio: (s.openingRatio * wider) / higher,
          }
          notBelow(find(large).bestMm, find(s).bestMm)
        },
      ),
      RUNS,
    )
  })

  test('a conducting layer never helps to find a piece outside it', () => {
    fc.assert(
      fc.property(setting, (s) => {
        const bare = find({ ...s, wrap: 'none' }, COIL_PARAMETERS, 'outside')
        notBelow(find(s, COIL_PARAMETERS, 'outside').expectedMm, bare.expectedMm)
      }),
      RUNS,
    )
  })

  test('the best size knows nothing of food and film; foil that hides the piece leaves none', () => {
    fc.assert(
      fc.property(setting, fc.double({ min: 0, max: 5, noNaN: true }), (s, conductivitySPerM) => {
        const { bestMm } = find({ ...s, wrap: 'none' })
        expect(find({ ...s, conductivitySPerM, wrap: 'film' }).bestMm).toBe(bestMm)
        const there = find(s)
        expect(there.bestMm).toBe(there.bestMm === null && s.wrap === 'foil' ? null : bestMm)
      }),
      RUNS,
    )
  })

  test('chances lie between 0 and 1 and none is NaN', () => {
    fc.assert(
      fc.property(setting, (s) => {
        const { curve } = find(s)
        for (const chance of curve.chance) expect(chance >= 0 && chance <= 1).toBe(true)
        for (const mm of curve.sizesMm) expect(mm > 0).toBe(true)
      }),
      RUNS,
    )
  })

  test('the same input gives the same answer', () => {
    fc.assert(
      fc.property(setting, (s) => {
        expect(assess(s)).toEqual(assess(s))
      }),
      { numRuns: 10 },
    )
  })
})
