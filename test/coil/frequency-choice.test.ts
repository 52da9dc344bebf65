import { describe, expect, test } from 'vitest'
import { assessCoil, type CoilInput } from '../../src/coil/assess-coil.ts'
import { bestStep, frequencyStep, frequencySubsets } from '../../src/coil/decide/frequency-choice.ts'
import { sampleContaminant, samplePoint } from './sample-point.ts'

describe('judging a choice of frequencies', () => {
  test('every choice once, singles first, no more at once than allowed', () => {
    expect(frequencySubsets([1, 2, 3], 3)).toHaveLength(7)
    expect(frequencySubsets([1, 2, 3], 1)).toEqual([[1], [2], [3]])
    expect(frequencySubsets([1, 2, 3, 4], 2)).toHaveLength(10)
  })

  test('the smallest worst ratio wins; a missing required size loses; then the smaller sizes', () => {
    const step = (f: number, sizes: (number | null)[], must: (number | null)[] = [1, 2]) =>
      frequencyStep([f], sizes, must)
    expect(bestStep([step(1, [0.5, 3]), step(2, [0.9, 1.9])]).frequenciesKHz).toEqual([2])
    expect(bestStep([step(1, [0.5, null]), step(2, [5, 9])]).frequenciesKHz).toEqual([2])
    expect(bestStep([step(1, [null, 1], [null, 2]), step(2, [1, 3], [null, 2])]).frequenciesKHz).toEqual([1])
    expect(bestStep([step(1, [2, 2], [null, null]), step(2, [1, 2], [null, null])]).frequenciesKHz).toEqual([
      2,
    ])
    expect(bestStep([step(1, [1, 1]), step(2, [1, 1])]).frequenciesKHz).toEqual([1])
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

  test('is never worse at its worst contaminant than any of its single frequencies, nor all together', () => {
    const assessment = assessCoil(input({}, 1.5, 3))
    const chosen = assessment.frequencySteps.find(
      ({ frequenciesKHz }) => frequenciesKHz.join() === assessment.frequenciesKHz.join(),
    )!
    for (const step of assessment.frequencySteps) {
      expect(chosen.worstRatio!).toBeLessThanOrEqual(step.worstRatio! + 1e-9)
    }
  })

  test('the unfinished search finds what the full one finds', () => {
    const quick = assessCoil(input({}, 1.5, 3))
    const frequencies = [50, 100, 300, 500, 850]
    let worst = Infinity
    for (const subset of frequencySubsets(frequencies, 5)) {
      const { machine } = input({}, 1.5, 3)
      const all = assessCoil(
        input(
          { machine: { ...machine, family: 'coil', frequenciesKHz: [...subset], use: 'together' } },
          1.5,
          3,
        ),
      )
      worst = Math.min(worst, all.frequencySteps[0]!.worstRatio ?? Infinity)
    }
    const chosen = quick.frequencySteps.find(
      ({ frequenciesKHz }) => frequenciesKHz.join() === quick.frequenciesKHz.join(),
    )!
    expect(chosen.worstRatio).toBeCloseTo(worst, 9)
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
