import { describe, expect, test } from 'vitest'
import { assessCoil, type CoilInput } from '../../src/coil/assess-coil.ts'
import type { CoilFinding } from '../../src/coil/assessment.ts'
import type { CoilMachine } from '../../src/contract/index.ts'
import { electricalSources } from '../../src/reference/electrical.ts'
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

describe('the machine at the point', () => {
  test('says what a smaller opening would find', () => {
    const { fitting, findings } = assess()
    expect(fitting!.opening.heightMm).toBeLessThan(175)
    expect(fitting!.expectedMm[0]!).toBeLessThan(findings[0]!.expectedMm!)
    const fits = assess({ point: samplePoint({ apertureHeightMm: null, apertureWidthMm: null }) })
    expect(fits.fitting).toBeNull()
  })

  test('free zone and pack gap follow from the opening', () => {
    const { metalFreeZone, packGap } = assess()
    expect(metalFreeZone).toEqual({ fixedMm: 262.5, movingMm: 350 })
    expect(packGap.neededMm).toBeCloseTo(210, 9)
    expect(packGap.givenMm).toBeCloseTo(20_000 / 60 - 150, 6)
    expect(assess({ point: samplePoint({ packsPerMin: null }) }).packGap.givenMm).toBeNull()
  })

  test('metallised film narrows, foil closes; outside the foil a piece is found again', () => {
    const dry = { conductivitySPerM: 0 }
    const size = (
      place: 'wrap' | 'sleeve',
      material: string,
      mm: number,
      placement: 'inside' | 'outside' = 'inside',
    ) =>
      first({
        machine: { ...single, frequenciesKHz: [50] },
        point: samplePoint({ heightMm: 30, parts: [{ material, mm, place }] }, dry),
        contaminants: [sampleContaminant('steel', { placement })],
      }).expectedMm
    const bare = first({
      machine: { ...single, frequenciesKHz: [50] },
      point: samplePoint({ heightMm: 30 }, dry),
      contaminants: [sampleContaminant('steel')],
    }).expectedMm!
    const film = size('wrap', 'metallised_film', 0.03)!
    expect(film).toBeGreaterThan(bare)
    expect(film).toBeLessThan(2 * bare)
    expect(size('sleeve', 'aluminium_foil', 0.009)).toBeNull()
    expect(size('wrap', 'pe', 0.05)).toBeCloseTo(bare, 12)
  })

  test('a steel can hides everything', () => {
    const can = samplePoint({
      outline: 'cylinder',
      heightMm: 110,
      widthMm: 75,
      lengthMm: 75,
      parts: [{ material: 'steel', mm: 0.2, place: 'wall' }],
    })
    const findings = assess({
      point: can,
      contaminants: ['steel', 'brass', 'ss316'].map((id) => sampleContaminant(id)),
    }).findings
    expect(findings.map(({ expectedMm }) => expectedMm)).toEqual([null, null, null])
  })

  test('iron powder costs iron and brass more than stainless', () => {
    const sizes = (ironMgPerKg: number) =>
      assess({
        machine: { ...single, frequenciesKHz: [850] },
        point: samplePoint(
          {},
          { food: 'flour', structure: 'powder', packing: 0.37, densityGPerCm3: 1.44, ironMgPerKg },
        ),
        contaminants: ['steel', 'brass', 'ss316'].map((id) => sampleContaminant(id)),
      }).findings.map(({ expectedMm }) => expectedMm!)
    const plain = sizes(0)
    const fortified = sizes(200).map((size, k) => size / plain[k]!)
    expect(fortified[0]!).toBeGreaterThan(fortified[2]!)
    expect(fortified[1]!).toBeGreaterThan(fortified[2]!)
    expect(fortified[2]!).toBeGreaterThan(1)
  })

  test('a thin stream in free fall is heard better than a full throat', () => {
    const size = (kgPerHour: number | null) =>
      first({
        point: samplePoint(
          { stage: 'free-fall', kgPerHour, fallHeightMm: 500, apertureHeightMm: 150, apertureWidthMm: 150 },
          { conductivitySPerM: 0.3 },
        ),
      }).expectedMm!
    expect(size(2000)).toBeLessThan(size(null))
  })
})

describe('static-field detector', () => {
  const assessment = assess({
    machine: { id: 'static', family: 'static-field' },
    contaminants: ['steel', 'ss430', 'ss316', 'brass', 'aluminium', 'quartz'].map((id) =>
      sampleContaminant(id),
    ),
  })

  test('computes no size and says what it reacts to', () => {
    expect(assessment.family).toBe('static-field')
    for (const f of assessment.findings) {
      expect([f.bestMm, f.expectedMm, f.cautiousMm, f.chanceAtMustFind]).toEqual([null, null, null, null])
    }
    expect(assessment.findings.map(({ answers }) => answers)).toEqual([
      true,
      true,
      false,
      false,
      false,
      false,
    ])
  })

  test('still refuses a pack that does not fit', () => {
    expect(
      assess({ machine: { id: 'static', family: 'static-field', apertureHeightMm: 30 } }).refusals,
    ).toHaveLength(1)
  })
})

describe('calculations', () => {
  const assessment = assess({
    idPrefix: 'p0.coil',
    machine: { ...single, frequenciesKHz: [100, 850] },
    point: samplePoint({ parts: [{ material: 'metallised_film', mm: 0.03, place: 'wrap' }] }),
    contaminants: [
      sampleContaminant('ss316'),
      sampleContaminant('steel', { shape: 'wire', lengthMm: 20 }),
      sampleContaminant('pp'),
    ],
  })
  const rows = new Map(assessment.calculations.map((row) => [row.id, row]))

  test('have one id each under the prefix, inputs that exist and sources that exist', () => {
    expect(rows.size).toBe(assessment.calculations.length)
    for (const row of rows.values()) {
      expect(row.id.startsWith('p0.coil.')).toBe(true)
      for (const input of row.inputs) expect(rows.has(input), `${row.id} needs ${input}`).toBe(true)
      for (const source of row.sources) expect(electricalSources.has(source), source).toBe(true)
      expect(row.formula).not.toBe('')
    }
  })

  test('lead from each size down to conductivities, without a circle', () => {
    for (const [k, metal] of [
      [0, 'ss316'],
      [1, 'steel'],
    ] as const) {
      const finding = assessment.findings[k]!
      expect(rows.get(finding.calculation)!.value).toBe(finding.expectedMm)
      const seen = new Set<string>()
      const walk = (id: string, path: readonly string[]) => {
        expect(path).not.toContain(id)
        seen.add(id)
        for (const input of rows.get(id)!.inputs) walk(input, [...path, id])
      }
      walk(finding.calculation, [])
      for (const leaf of [
        `metal.${metal}.conductivity`,
        'food.conductivity',
        'food.at25',
        'noise.calibrated',
        'pack.0.conductance',
        'threshold',
        'spread',
      ]) {
        expect(seen.has(`p0.coil.${leaf}`), leaf).toBe(true)
      }
    }
    expect(assessment.findings[2]!.calculation).toBe('')
  })

  test('the statistic at the expected size lies near threshold and quantile, raised by the spread', () => {
    const d = rows.get('p0.coil.c0.statistic')!.value as number
    expect(d).toBeGreaterThan(assessment.thresholdZ + 1.28)
    expect(d).toBeLessThan(3 * assessment.thresholdZ)
  })
})
