import { describe, expect, test } from 'vitest'
import { assessCoil, type CoilInput } from '../../src/coil/assess-coil.ts'
import { bestChoice, frequencySubsets } from '../../src/coil/decide/frequency-choice.ts'
import { sampleContaminant, samplePoint } from './sample-point.ts'

describe('judging a choice of frequencies', () => {
  test('every choice once, singles first, no more at once than allowed', () => {
    expect(frequencySubsets([1, 2, 3], 3)).toHaveLength(7)
    expect(frequencySubsets([1, 2, 3], 1)).toEqual([[1], [2], [3]])
    expect(frequencySubsets([1, 2, 3, 4], 2)).toHaveLength(10)
  })

  test('the least smooth norm wins; what is not found counts as 12 mm; what none finds is left out', () => {
    const choice = (rows: (number | null)[][], must: (number | null)[]) =>
      bestChoice(
        rows.map((judgedMm, k) => ({ frequenciesKHz: [k + 1], judgedMm })),
        must,
      ).index
    const must = [1, 2]
    expect(
      choice(
        [
          [0.5, 3],
          [0.9, 1.9],
        ],
        must,
      ),
    ).toBe(1)
    expect(
      choice(
        [
          [0.5, null],
          [2, 4],
        ],
        must,
      ),
    ).toBe(1)
    expect(
      choice(
        [
          [null, 1],
          [null, 3],
        ],
        must,
      ),
    ).toBe(0)
    expect(
      choice(
        [
          [2, 2],
          [1, 2],
        ],
        [null, null],
      ),
    ).toBe(1)
  })

  test('of single frequencies that are as good the middle is kept; the runner-up lies outside them', () => {
    const rows = [[2], [1.02], [1], [1.01], [1.5]].map((judgedMm, k) => ({ frequenciesKHz: [k], judgedMm }))
    expect(bestChoice(rows, [1])).toMatchObject({ index: 2, runnerUp: 4 })
  })

  test('of sets that are as good the least is kept, the fewer frequencies on a tie', () => {
    const rows = [
      { frequenciesKHz: [1], judgedMm: [1] },
      { frequenciesKHz: [2], judgedMm: [1.3] },
      { frequenciesKHz: [1, 2], judgedMm: [1] },
    ]
    expect(bestChoice(rows, [1])).toMatchObject({ index: 0, runnerUp: 1 })
  })
})

describe('a machine that may choose', () => {
  const input = (changes: Partial<CoilInput>, mustSteel: number, mustStainless: number): CoilInput => ({
    machine: { id: 'coil', family: 'coil', frequenciesKHz: [50, 100, 300, 500, 850], use: 'choose' },
    point: samplePoint({}, { conductivitySPerM: 0.5 }),
    contaminants: [
      sampleContaminant('steel', { mustFindMm: mustSteel }),
      sampleContaminant('ss316', { mustFindMm: mustStainless }),
    ],
    ...changes,
  })

  test('goes low for iron in wet food and higher for stainless', () => {
    const iron = assessCoil(input({ mostAtOnce: 1 }, 1, 20)).frequenciesKHz[0]!
    const stainless = assessCoil(input({ mostAtOnce: 1 }, 20, 1)).frequenciesKHz[0]!
    expect(iron).toBeLessThanOrEqual(100)
    expect(stainless).toBeGreaterThanOrEqual(300)
  })

  test('has the least norm of all it tried, or one of single frequencies within 3 % of it', () => {
    for (const mostAtOnce of [1, 5]) {
      const { frequencySteps, frequenciesKHz, frequencyRunnerUp } = assessCoil(input({ mostAtOnce }, 1.5, 3))
      const norms = frequencySteps.map(({ norm }) => norm!)
      const chosen = frequencySteps.find((step) => step.frequenciesKHz.join() === frequenciesKHz.join())!
      expect(chosen.norm!).toBeLessThanOrEqual(Math.min(...norms) * (mostAtOnce === 1 ? 1.03 : 1 + 1e-9))
      expect(frequencyRunnerUp!.norm!).toBeGreaterThan(chosen.norm!)
    }
  })

  test('is judged as not found where iron of the least permeability would not suit', () => {
    const { frequencySteps } = assessCoil(input({ mostAtOnce: 1 }, 1.5, 3))
    const at = (kHz: number) => frequencySteps.find(({ frequenciesKHz }) => frequenciesKHz[0] === kHz)!
    expect(at(100).judgedMm[0]).not.toBeNull()
    expect(at(850).judgedMm[0]).toBeNull()
    expect(at(850).judgedMm[1]).not.toBeNull()
  })

  test('dry, one frequency beats all together by 10 to 20 % of size', () => {
    const point = samplePoint({ heightMm: 60 }, { conductivitySPerM: 0 })
    const choosing = assessCoil(input({ point }, 1, 2))
    const { machine } = input({}, 1, 2)
    const together = assessCoil(
      input(
        {
          point,
          machine: { ...machine, family: 'coil', frequenciesKHz: [50, 100, 300, 850], use: 'together' },
        },
        1,
        2,
      ),
    )
    expect(choosing.frequenciesKHz).toEqual([850])
    expect(together.frequenciesKHz).toEqual([50, 100, 300, 850])
    for (const k of [0, 1]) {
      const ratio = together.findings[k]!.expectedMm! / choosing.findings[k]!.expectedMm!
      expect(ratio).toBeGreaterThan(1.08)
      expect(ratio).toBeLessThan(1.2)
    }
  })
})
