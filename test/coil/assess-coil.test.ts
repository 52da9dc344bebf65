import { describe, expect, test } from 'vitest'
import { assessCoil, type CoilInput } from '../../src/coil/assess-coil.ts'
import type { CoilFinding } from '../../src/coil/assessment.ts'
import type { CoilMachine } from '../../src/contract/index.ts'
import { sampleContaminant, samplePoint } from './sample-point.ts'

const single: CoilMachine = { id: 'coil', family: 'coil', frequenciesKHz: [300], use: 'together' }

const assess = (changes: Partial<CoilInput> = {}) =>
  assessCoil({
    machine: single,
    point: samplePoint(),
    contaminants: [sampleContaminant('ss316', { mustFindMm: 3 })],
    ...changes,
  })

const first = (changes: Partial<CoilInput> = {}): CoilFinding => assess(changes).findings[0]!

describe('a finding', () => {
  test('orders its sizes and reads its chances off one curve', () => {
    const f = first()
    expect(f.bestMm!).toBeLessThanOrEqual(f.expectedMm!)
    expect(f.expectedMm!).toBeLessThanOrEqual(f.cautiousMm!)
    expect(f.halfMm!).toBeLessThan(f.expectedMm!)
    expect(f.expectedMm!).toBeLessThan(f.sureMm!)
    const at = first({ contaminants: [sampleContaminant('ss316', { mustFindMm: f.expectedMm! })] })
    expect(at.chanceAtMustFind).toBeCloseTo(0.9, 3)
    expect(f.curve.sizesMm).toHaveLength(f.curve.chance.length)
    expect(f.curve.chance.every((chance) => chance >= 0 && chance <= 1)).toBe(true)
    expect(Math.max(...f.curve.chance)).toBeGreaterThan(0.95)
    expect(Math.min(...f.curve.chance)).toBeLessThan(0.1)
  })

  test('ranges the best possible size with the noise, 1.3 either way: a ball answers by its volume, 1.3 to 1/3', () => {
    const low: CoilMachine = { ...single, frequenciesKHz: [10] }
    const iron = first({ machine: low, contaminants: [sampleContaminant('steel')] })
    expect(iron.bestRangeMm![0] / iron.bestMm!).toBeCloseTo(1.3 ** (-1 / 3), 2)
    expect(iron.bestRangeMm![1] / iron.bestMm!).toBeCloseTo(1.3 ** (1 / 3), 2)
    const stainless = first().bestRangeMm!
    expect(stainless[0]).toBeLessThan(first().bestMm!)
    expect(stainless[1]).toBeGreaterThan(first().bestMm!)
    expect(first({ contaminants: [sampleContaminant('wood')] }).bestRangeMm).toBeNull()
  })

  test('may be thicker than a thin food; has no size above 12 mm', () => {
    const thin = first({ point: samplePoint({ heightMm: 1 }) })
    expect(thin.limitMm).toBe(12)
    expect(thin.expectedMm!).toBeGreaterThan(1)
    const large = { apertureHeightMm: 1500, apertureWidthMm: 3000, heightMm: 900, widthMm: 900 }
    const f = first({ point: samplePoint(large) })
    expect(f.expectedMm).toBeNull()
    expect(f.cautiousMm).toBeNull()
  })

  test('of what is no metal has no size and does not answer', () => {
    const f = first({ contaminants: [sampleContaminant('glass_container'), sampleContaminant('pp')] })
    expect(f.answers).toBe(false)
    expect(f.bestMm).toBeNull()
  })

  test('cautious never falls below the common-practice floor of a tunnel; pipes and throats may have 0.1 mm less', () => {
    const tiny = samplePoint(
      { apertureHeightMm: 75, apertureWidthMm: 75, heightMm: 30 },
      { conductivitySPerM: 0 },
    )
    const metals = ['steel', 'brass', 'ss316'].map((id) => sampleContaminant(id))
    const machine = { ...single, frequenciesKHz: [850] }
    const cautious = assess({ point: tiny, contaminants: metals, machine }).findings
    ;[0.6, 0.8, 1].forEach((floor, k) => {
      expect(cautious[k]!.expectedMm!).toBeLessThan(floor)
      expect(cautious[k]!.cautiousMm).toBe(floor)
      expect(cautious[k]!.widest).toBe('common-practice floor')
    })
    const throat = samplePoint({ ...tiny, stage: 'free-fall', fallHeightMm: 500 }, { conductivitySPerM: 0 })
    expect(
      assess({ point: throat, contaminants: metals, machine }).findings.map(({ floorMm }) => floorMm),
    ).toEqual([0.5, 0.7000000000000001, 0.9])
  })

  test('a wire: non-magnetic is weak along the travel, iron across it; the size is that of the weak way', () => {
    const wire = (id: string) => sampleContaminant(id, { shape: 'wire', lengthMm: 20 })
    const [stainless, iron] = assess({ contaminants: [wire('ss316'), wire('steel')] }).findings
    expect(stainless!.weakOrientation).toBe('along')
    expect(iron!.weakOrientation).toBe('across')
    for (const f of [stainless!, iron!]) {
      expect(f.orientations).toHaveLength(2)
      const sizes = f.orientations.map(({ expectedMm }) => expectedMm!)
      expect(f.expectedMm).toBeCloseTo(Math.max(...sizes), 9)
      expect(Math.max(...sizes)).toBeGreaterThan(Math.min(...sizes))
    }
  })

  test('a longer wire may be thinner', () => {
    const at = (lengthMm: number) =>
      first({ contaminants: [sampleContaminant('ss316', { shape: 'wire', lengthMm })] }).expectedMm!
    expect(at(40)).toBeLessThan(at(10))
  })

  test('an aluminium flake is weak lying flat, and easier at random directions', () => {
    const f = first({
      contaminants: [sampleContaminant('aluminium', { shape: 'flake', faceMm2: 50, mustFindMm: 0.1 })],
    })
    expect(f.weakOrientation).toBe('along')
    expect(f.chanceAnyOrientation!).toBeGreaterThan(f.chanceAtMustFind!)
  })

  test('a flake of iron is weak face to the travel', () => {
    const f = first({
      contaminants: [sampleContaminant('steel', { shape: 'flake', faceMm2: 10, mustFindMm: 0.3 })],
      machine: { ...single, frequenciesKHz: [50] },
    })
    expect(f.weakOrientation).toBe('across')
  })

  test('stainless of unknown grade is promised no better than its hardest grade', () => {
    const [unknown, hard] = assess({
      contaminants: [sampleContaminant('stainless_any'), sampleContaminant('ss316')],
    }).findings
    expect(unknown!.expectedMm).toBeCloseTo(hard!.expectedMm!, 9)
    expect(unknown!.cautiousMm!).toBeGreaterThanOrEqual(hard!.cautiousMm! - 1e-9)
  })

  test('the centre of the opening is the weak place', () => {
    const [centre, wall] = first().zones
    expect(centre!.sizes.expectedMm!).toBeGreaterThan(wall!.sizes.expectedMm!)
    const strict = first({ contaminants: [sampleContaminant('ss316', { mustFindMm: 1.5 })] })
    expect(strict.zones[0]!.state).toBe('degraded')
    expect(first().zones[0]!.state).toBe('findable')
  })

  test('knows sizes that are missed again: large iron at 1000 kHz in wet food', () => {
    const assessment = assess({
      machine: { ...single, frequenciesKHz: [1000] },
      point: samplePoint({}, { conductivitySPerM: 0.75 }),
      contaminants: [sampleContaminant('steel')],
    })
    const f = assessment.findings[0]!
    expect(f.missedAgain).toHaveLength(1)
    expect(f.missedAgain[0]!.fromMm).toBeLessThan(f.missedAgain[0]!.toMm!)
    expect(f.expectedMm).toBeNull()
    expect(f.frequencyUnsuitable).toBe(true)
  })

  test('iron beyond its turning point is not to be trusted; at a low frequency it is', () => {
    const at = (f: number) =>
      first({
        machine: { ...single, frequenciesKHz: [f] },
        point: samplePoint({}, { conductivitySPerM: 0.5 }),
        contaminants: [sampleContaminant('steel')],
      })
    expect(at(850).frequencyUnsuitable).toBe(true)
    expect(at(100).frequencyUnsuitable).toBe(false)
  })
})
