import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checksPerDay, holdRow, INTERVALS_MIN } from '../../src/checks/hold-table.ts'
import {
  beltTiming,
  fallSeconds,
  fallTiming,
  lossPerRejectKg,
  speedAfterFall,
} from '../../src/checks/reject-timing.ts'
import { rejectWorkload } from '../../src/checks/reject-workload.ts'
import {
  chanceNeeded,
  failsByItself,
  falseFailuresAYear,
  notices,
  routinePiece,
  smallestWith,
} from '../../src/checks/routine-piece.ts'
import { chanceAt, chanceByLogit } from '../../src/register/sizes/control-chance.ts'

/** The worked line (invented; figures computed outside this project). */
const SERIES = [1, 1.2, 1.5, 2, 2.5, 3, 3.5, 4]
const stoneBody = (d: number) => chanceAt(d, 2.2, 2.5)
const stoneHeap = (d: number) => chanceAt(d, 2.31, 2.625)
const steelHeap = (d: number) => chanceAt(d, 0.945, 1.155)
const coil = (a50: number, a90: number) => (d: number) => chanceAt(d, a50, a90)

describe('the smallest piece found 995 times in a thousand', () => {
  it.each([
    ['x-ray stone, heap end', stoneHeap, 3, 0.99561],
    ['x-ray 316, heap end', steelHeap, 1.5, 0.99841],
    ['coil 316', coil(1.6, 2), 3, 0.99985],
    ['coil iron', coil(0.9, 1.1), 1.5, 0.99945],
    ['coil brass', coil(1.1, 1.35), 2, 0.99991],
  ] as const)('%s', (_what, chance, size, wanted) => {
    expect(smallestWith(SERIES, chance, 0.995)).toBe(size)
    expect(chance(size)).toBeCloseTo(wanted, 5)
  })

  it('rounds nothing: 0.99481 is not 0.995', () => {
    expect(coil(1.6, 2)(2.5)).toBeCloseTo(0.99481, 5)
    expect(coil(1.6, 2)(2)).toBeCloseTo(0.9, 9)
    expect(stoneBody(2.5)).toBeCloseTo(0.9, 9)
    expect(stoneHeap(2.5)).toBeCloseTo(0.7859, 4)
    expect(coil(1.1, 1.35)(1.5)).toBeCloseTo(0.97386, 5)
  })
})

describe('the link in the tail', () => {
  // Outside figures of the invented line: the same a50 and a90 give 0.98893 at 3.0 mm, 0.995 only at 3.143 mm.
  it('is lower by a logit than by a probit', () => {
    expect(chanceByLogit(2.31, 2.31, 2.625)).toBeCloseTo(0.5, 12)
    expect(chanceByLogit(2.625, 2.31, 2.625)).toBeCloseTo(0.9, 12)
    expect(chanceByLogit(3, 2.31, 2.625)).toBeCloseTo(0.98893, 5)
    expect(chanceByLogit(3.143, 2.31, 2.625)).toBeCloseTo(0.995, 4)
    expect(chanceAt(3, 2.31, 2.625)).toBeCloseTo(0.99561, 5)
  })
})

describe('the check that fails by itself', () => {
  const passes = [stoneHeap(3), stoneBody(3), stoneBody(3), steelHeap(1.5)]
  it('fails a healthy unit 33 times a year, each time holding what was made since', () => {
    expect(failsByItself(passes)).toBeCloseTo(0.00783, 5)
    expect(failsByItself(passes) * 17).toBeCloseTo(0.133, 3)
    expect(Math.round(falseFailuresAYear(passes, 17, 250))).toBe(33)
  })

  it('nine passes at 0.995 are a failure nearly every day; one a quarter needs 0.9999', () => {
    expect(failsByItself(Array(9).fill(0.995))).toBeCloseTo(0.044, 3)
    expect(falseFailuresAYear(Array(9).fill(0.995), 17, 1)).toBeCloseTo(0.75, 2)
    expect(chanceNeeded(1, 9, 17, 63)).toBeCloseTo(0.9999, 5)
  })

  it('chooses by failures a year: 3 mm would fail too often, 3.5 mm does not', () => {
    const plan = { checksPerDay: 17, daysPerYear: 250, mostAYear: 4 }
    expect(routinePiece(SERIES, [stoneHeap, stoneBody, stoneBody], plan)?.sizeMm).toBe(3.5)
    expect(routinePiece([1, 2], [stoneHeap], plan)).toBeNull()
  })

  it('a piece that fails seldomer is never smaller', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 100, noNaN: true }), (most) => {
        const at = (mostAYear: number) =>
          routinePiece(SERIES, [stoneHeap], { checksPerDay: 17, daysPerYear: 250, mostAYear })?.sizeMm ??
          Infinity
        expect(at(most)).toBeGreaterThanOrEqual(at(most * 2))
      }),
    )
  })
})

describe('what a check notices', () => {
  it.each([
    [1, 0.9956, 0.006, 0.1],
    [1.05, 0.983, 0.025, 0.35],
    [1.1, 0.952, 0.078, 0.75],
    [1.2, 0.786, 0.363, 0.9995],
    [1.3, 0.496, 0.768, 1],
    [1.5, 0.074, 0.998, 1],
  ])('sizes grown by %s', (worse, heap, once, day) => {
    const [noticed] = notices(3, [stoneHeap, stoneBody, stoneBody], [worse], 17)
    expect(stoneHeap(3 / worse)).toBeCloseTo(heap, 3)
    expect(noticed!.chance).toBeCloseTo(once, 3)
    expect(noticed!.inADay).toBeCloseTo(day, day > 0.999 ? 3 : 2)
  })
})

it('hold table of the worked line', () => {
  const line = {
    packsPerMin: 80,
    massG: 500,
    hoursPerDay: 16,
    reactMin: 10,
    reinspectPerMin: 48,
    minutesPerCheck: 4,
  }
  const rows = INTERVALS_MIN.map((interval) => holdRow(line, interval))
  expect(rows.map((r) => r.packsHeld)).toEqual([2000, 3200, 5600, 10400, 20000, 39200])
  expect(rows.map((r) => r.kgHeld)).toEqual([1000, 1600, 2800, 5200, 10000, 19600])
  expect(rows.map((r) => Number(r.hoursToReinspect.toFixed(2)))).toEqual([
    0.69, 1.11, 1.94, 3.61, 6.94, 13.61,
  ])
  expect(rows.map((r) => r.checksPerDay)).toEqual([65, 33, 17, 9, 5, 3])
  expect(rows.map((r) => r.minutesPerDay)).toEqual([260, 132, 68, 36, 20, 12])
  expect(checksPerDay(16, 60)).toBe(17)
})

it('rejects of the worked line: 76.8 false a day, a stone in one of six hundred', () => {
  const work = rejectWorkload(76_800, 0.001, 31 / 19.2, 5)
  expect(work.falsePerDay).toBeCloseTo(76.8, 6)
  expect(work.truePerDay).toBeCloseTo(0.124, 3)
  expect(work.chanceOfPiece).toBeCloseTo(0.0016, 4)
  expect(work.hoursToOpenAll).toBeCloseTo(6.4, 1)
})

describe('reject on the belt', () => {
  const at = (speedMPerMin: number, packsPerMin: number) => {
    const pitchMm = (speedMPerMin * 1000) / packsPerMin
    return beltTiming({
      speedMPerMin,
      packMm: 180,
      pitchMm,
      distanceMm: 900,
      cycleMs: 400,
      positionErrorMm: 25,
      shortestGapMm: pitchMm - 180,
    })
  }
  it('at 40 m/min and 80 bags: delay, window and gap', () => {
    const timing = at(40, 80)
    expect(timing.delayMs).toBeCloseTo(1350, 6)
    expect(timing.actAtLeastMs).toBeCloseTo(345, 6)
    expect(timing.actAtMostMs).toBeCloseTo(1155, 6)
    expect(timing.neededGapMm).toBeCloseTo(86.67, 2)
    expect(timing.pitchMs).toBeCloseTo(750, 6)
    expect(timing.possible).toBe(true)
  })

  it.each([
    [20, 80, true],
    [15, 80, false],
    [40, 150, false],
  ])('%s m/min with %s bags', (speed, packs, possible) => {
    expect(at(speed, packs).possible).toBe(possible)
  })
})

describe('reject in free fall', () => {
  const started = speedAfterFall(0.3)
  it('times of fall over 0.8 m', () => {
    expect(started).toBeCloseTo(2.426, 3)
    expect(fallSeconds(started, 0.8)).toBeCloseTo(0.226, 3)
    expect(fallSeconds(0, 0.8)).toBeCloseTo(0.404, 3)
    expect(fallSeconds(3, 0.8)).toBeCloseTo(0.201, 3)
  })

  it('150 ms is in time for all three, 230 ms for the slowest only', () => {
    for (const v of [started, 0, 3]) expect(fallTiming(v, 800, 150).possible).toBe(true)
    expect(fallTiming(started, 800, 230).possible).toBe(false)
  })

  it('a flap open for 0.3 s loses 0.2 kg', () => {
    expect(lossPerRejectKg(2400, 300)).toBeCloseTo(0.2, 9)
  })
})
