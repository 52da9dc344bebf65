import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { RunRow } from '../../src/contract/index.ts'
import { profileEnd } from '../../src/runs/fit/size-bound.ts'
import { readTrial } from '../../src/runs/index.ts'

const SIX = [1.9, 2.1, 2.3, 2.5, 2.7, 3.0]
const base = { equipment: 'X-07', setting: '12', date: '2026-11-27' }
const clean: RunRow = { ...base, material: '', runs: 3000, found: 0 }

/** Rows of stone, one a size. */
const stone = (found: readonly number[], runs = 10, sizes: readonly number[] = SIX): RunRow[] =>
  sizes.map((sizeMm, i) => ({
    ...base,
    material: 'quartz',
    position: 'heap end',
    sizeMm,
    runs,
    found: found[i]!,
  }))
const groupOf = (rows: readonly RunRow[]) => readTrial(rows).groups[0]!

describe('what a trial demonstrates', () => {
  it('a curve with two mixed sizes and a clean run: the penalised bound, rounded up, with packs, day, setting', () => {
    const group = groupOf([...stone([0, 2, 5, 8, 9, 10]), clean])
    expect(group.a9095).toBeCloseTo(2.884175, 4)
    expect(group.a9095Plain).toBeCloseTo(2.830297, 4)
    expect(group.a9095Delta).toBeCloseTo(2.787738, 4)
    expect(group.demonstrated).toEqual({ sizeMm: 2.89, basis: 'curve', date: '2026-11-27', packs: 60 })
    expect(group.words).toMatch(/2\.89 mm, 95 % sure, on these 60 packs, on 2026-11-27, at setting 12/)
  })

  it('nothing without a clean run, and says what is missing', () => {
    const trial = readTrial(stone([0, 2, 5, 8, 9, 10]))
    expect(trial.groups[0]!.demonstrated).toBeNull()
    expect(trial.groups[0]!.words).toMatch(/^Not demonstrated: no clean packs/)
    expect(trial.missing[0]).toMatch(/A clean run on X-07/)
  })

  it('nothing by an all-or-nothing card', () => {
    const group = groupOf([...stone([0, 13], 13, [2, 3]), clean])
    expect(group.fit?.separated).toBe(true)
    expect([group.a9095, group.a9095Plain, group.a9095Delta, group.demonstrated]).toEqual([
      null,
      null,
      null,
      null,
    ])
    expect(group.words).toContain('Not demonstrated by a curve: fewer than two sizes')
    expect(group.card).toEqual({ downToMm: 3, interval: [2, 3] })
  })

  it('nothing by one mixed size, by no slope, or above the largest size tried', () => {
    expect(groupOf([...stone([0, 0, 11, 15], 15, [1.5, 2, 2.5, 3]), clean]).words).toContain(
      'fewer than two sizes',
    )
    expect(groupOf([...stone([7, 8, 7, 8, 7, 8]), clean]).words).toContain(
      'larger pieces are found more often',
    )
    expect(groupOf([...stone([0, 0, 1, 2, 5, 7]), clean]).words).toContain('above the largest')
  })

  it('where no slope is shown the bound is no size at all, however far out it is looked for', () => {
    const counts = [3, 2, 3, 3, 2, 4].map((found, i) => ({ x: Math.log(SIX[i]!), runs: 4, found }))
    const floor = { kind: 'fixed', chance: 0 } as const
    for (const method of ['firth', 'ml'] as const)
      expect(profileEnd(counts, { link: 'logit', method, floor }, 0.9)).toBe(Infinity)
  })

  it.each([
    [29, 29, 3],
    [45, 46, 3],
    [28, 28, null],
    [44, 46, null],
  ])('%i of %i at one size', (found, runs, shown) => {
    const group = groupOf([...stone([found], runs, [3]), { ...clean, runs: 9000 }])
    expect(group.demonstrated?.sizeMm ?? null).toBe(shown)
    if (shown !== null) expect(group.demonstrated).toMatchObject({ basis: 'exact', packs: runs })
  })

  it('29 of 29 shows nothing where the clean run leaves room for one reject in 20', () => {
    expect(groupOf([...stone([29], 29, [3]), { ...clean, runs: 60 }]).demonstrated).toBeNull()
  })

  it('asks sizes from the largest down and stops at the first that fails', () => {
    const rows = [...stone([29, 40], 46, [2, 3]), { ...clean, runs: 9000 }]
    expect(groupOf(rows.map((r) => (r.sizeMm === 2 ? { ...r, runs: 29 } : r))).demonstrated).toBeNull()
  })

  it('simulated rows demonstrate nothing', () => {
    const group = groupOf(
      [...stone([0, 2, 5, 8, 9, 10]), clean].map((r) => ({ ...r, note: 'simulated, seed 1' })),
    )
    expect(group.simulated).toBe(true)
    expect(group.demonstrated).toBeNull()
  })
})

describe('the unit is one piece placed anew in one pack', () => {
  it('29 runs of one piece in one pack are one piece', () => {
    const rows = [
      { ...stone([29], 29, [3])[0]!, piece: 'Q3', pack: '1' },
      { ...clean, runs: 9000 },
    ]
    const group = groupOf(rows)
    expect([group.pieces, group.runs]).toEqual([1, 29])
    expect(group.demonstrated).toBeNull()
    expect(group.words).toContain('29 runs of 1 pieces')
  })

  /** Sizes of ten pieces, each run `runs` times in its pack; `found` of them each time, the others never. */
  const repeated = (found: readonly number[], runs: number, foundOf: (piece: number) => number): RunRow[] =>
    SIX.flatMap((sizeMm, i) =>
      Array.from({ length: 10 }, (_, piece) => ({
        ...stone([0])[0]!,
        sizeMm,
        piece: `${sizeMm}`,
        pack: `${sizeMm} ${piece}`,
        runs,
        found: piece < found[i]! ? foundOf(piece) : 0,
      })),
    )

  it('runs of a piece that always agree count once: the design effect is their number', () => {
    const once = groupOf([...stone([0, 2, 5, 8, 9, 10]), clean])
    const group = groupOf([...repeated([0, 2, 5, 8, 9, 10], 3, () => 3), clean])
    expect(group.clusters).toEqual({ likeness: 1, designEffect: 3, counted: 60 })
    expect(group.a9095).toBeCloseTo(once.a9095!, 9)
    expect(group.words).toContain('180 runs of 60 pieces: runs of one piece in one pack are alike')
  })

  it('runs that agree in part count in part, by Kish’s design effect', () => {
    // By hand, each mixed size alike: 10 pieces of 2 runs, of 5 both found, of 5 one: p 0.75, between
    // 2·(5·0.25² + 5·0.25²) = 1.25 over 9, within 5·0.5 = 2.5 over 10; ρ = (0.1389 − 0.25)/… < 0, so 0.
    const unlike = repeated([0, 10, 10, 10, 10, 10], 2, (piece) => (piece < 5 ? 2 : 1))
    expect(groupOf([...unlike, clean]).clusters).toEqual({ likeness: 0, designEffect: 1, counted: 120 })
    // 4 of 10 found twice, 2 once, 4 never: p 0.5, B = 2·8·0.25/9 = 4/9, W = 2·0.5/10 = 0.1, n₀ 2: ρ = 31/49.
    const some = repeated([0, 6, 6, 6, 6, 6], 2, (piece) => (piece < 4 ? 2 : 1))
    const { likeness, designEffect, counted } = groupOf([...some, clean]).clusters!
    expect(likeness).toBeCloseTo(31 / 49, 12)
    expect(designEffect).toBeCloseTo(1 + 31 / 49, 12)
    expect(counted).toBeCloseTo(120 / (1 + 31 / 49), 9)
  })

  it('where too few pieces say how alike their runs are, each counts once, and the words say so', () => {
    const few = repeated([0, 1, 1, 2, 2, 2], 5, () => 5).filter(({ pack }) => / [01]$/.test(pack!))
    const group = groupOf([...few, clean])
    expect(group.clusters).toEqual({ likeness: null, designEffect: 5, counted: 12 })
    expect(group.words).toContain('count once; too few pieces')
  })

  it('one ball in 29 packs is 29 pieces; one flake in 29 packs is one', () => {
    const in29 = (shape: 'sphere' | 'flake'): RunRow[] =>
      Array.from({ length: 29 }, (_, i) => ({
        ...stone([1], 1, [3])[0]!,
        ...(shape === 'flake' ? { shape, faceMm2: 30 } : { shape }),
        piece: 'Q3',
        pack: String(i),
      }))
    const many = { ...clean, runs: 9000 }
    expect(groupOf([...in29('sphere'), many]).demonstrated?.sizeMm).toBe(3)
    expect(groupOf([...in29('flake'), many]).pieces).toBe(1)
  })

  it('keeps places, settings and machines apart', () => {
    const rows = stone([0, 2, 5, 8, 9, 10])
    const others = [
      rows.map((r) => ({ ...r, position: 'middle' })),
      rows.map((r) => ({ ...r, setting: '13' })),
      rows.map((r) => ({ ...r, equipment: 'X-08' })),
    ]
    expect(readTrial([...rows, ...others.flat(), clean]).groups).toHaveLength(4)
  })

  it('names packs that were rejected clean and carried a piece', () => {
    const rows = [
      { ...clean, pack: '7', runs: 3, found: 1 },
      { ...stone([1], 1, [3])[0]!, pack: '7' },
    ]
    expect(readTrial(rows).missing.join(' ')).toContain('Packs 7 were rejected clean')
  })
})

describe('properties of a reading', () => {
  const counts = fc.tuple(...SIX.map(() => fc.integer({ min: 0, max: 12 })))

  it('does not hang on the order of rows', () => {
    fc.assert(
      fc.property(counts, fc.integer({ min: 0, max: 5 }), (found, turn) => {
        const rows = [...stone(found, 12), clean]
        const turned = [...rows.slice(turn), ...rows.slice(0, turn)]
        expect(groupOf(turned).a9095).toBe(groupOf(rows).a9095)
      }),
      { numRuns: 30 },
    )
  })

  it('the bound lies above the best guess, and is shown only up to the largest size', () => {
    fc.assert(
      fc.property(counts, (found) => {
        const { a90, a9095 } = groupOf([...stone(found, 12), clean])
        if (a9095 === null) return
        expect(a9095).toBeGreaterThan(a90!)
        expect(a9095).toBeLessThanOrEqual(3)
      }),
      { numRuns: 60 },
    )
  })

  it('scales with the unit: sizes twice as large give a bound twice as large', () => {
    fc.assert(
      fc.property(counts, (found) => {
        const once = groupOf([...stone(found, 12), clean]).a9095
        const twice = groupOf([
          ...stone(
            found,
            12,
            SIX.map((s) => 2 * s),
          ),
          clean,
        ]).a9095
        if (once === null) expect(twice).toBeNull()
        else expect(twice! / once).toBeCloseTo(2, 6)
      }),
      { numRuns: 40 },
    )
  })

  it('one more find at the largest size never raises the bound', () => {
    fc.assert(
      fc.property(counts, (found) => {
        const more = [...found.slice(0, 5), Math.min(12, found[5]! + 1)]
        const before = groupOf([...stone(found, 12), clean]).a9095
        const after = groupOf([...stone(more, 12), clean]).a9095
        if (before !== null && after !== null) expect(after).toBeLessThanOrEqual(before + 1e-9)
      }),
      { numRuns: 60 },
    )
  })
})

describe('two machines on the same packs', () => {
  const pairOf = (equipment: string, pack: number, found: number): RunRow => ({
    ...base,
    equipment,
    material: 'quartz',
    piece: 'Q3',
    pack: String(pack),
    sizeMm: 3,
    runs: 1,
    found,
  })
  const pairs = (both: number, onlyA: number, onlyB: number, neither: number) => {
    const results = [
      ...Array(both).fill([1, 1]),
      ...Array(onlyA).fill([1, 0]),
      ...Array(onlyB).fill([0, 1]),
      ...Array(neither).fill([0, 0]),
    ] as [number, number][]
    return results.flatMap(([a, b], i) => [pairOf('A', i, a), pairOf('B', i, b)])
  }

  it('41 both, 9 against 2: p 0.065, no difference shown, which is not the same', () => {
    const [paired] = readTrial(pairs(41, 9, 2, 8)).paired
    expect(paired).toMatchObject({ both: 41, onlyFirst: 9, onlySecond: 2, neither: 8 })
    expect(paired!.p).toBeCloseTo(0.0654, 4)
    expect(paired!.words).toBe('no difference shown. That is not "the same"')
  })

  it('five that differ can never show one; twelve to one do', () => {
    expect(readTrial(pairs(40, 5, 0, 0)).paired[0]!.words).toContain('none can show')
    expect(readTrial(pairs(40, 12, 1, 0)).paired[0]!.words).toMatch(/^A found pieces/)
  })

  it('packs that one machine alone ran are no pairs', () => {
    expect(
      readTrial(pairs(10, 0, 0, 0).filter(({ equipment, pack }) => equipment === 'A' || pack === '3'))
        .paired[0],
    ).toMatchObject({ both: 1, onlyFirst: 0, onlySecond: 0, neither: 0, p: null })
  })
})
