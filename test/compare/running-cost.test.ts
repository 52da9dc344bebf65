import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { readCosts } from '../../src/compare/cost-fields.ts'
import { type OwnCosts, type SharedCosts, yearlyCost } from '../../src/compare/running-cost.ts'
import { type Laid, laid } from './two-machines.ts'

const pace = { packsPerMin: 50, hoursPerDay: 16, falseRejectsPerPack: 0.001 }
const own: OwnCosts = {
  price: 90_000,
  years: 9,
  upkeepPerYear: 4000,
  kW: 2,
  workHoursPerDay: 0.5,
}
const shared: SharedCosts = { daysPerYear: 250, perWorkHour: 30, perKWh: 0.2, perRejectedPack: 1.5 }

describe('the yearly cost', () => {
  it('is worked out from the numbers entered, line by line', () => {
    const { lines, sum, complete, falseRejectsPerDay } = yearlyCost(own, shared, pace)
    expect(lines.map(({ id, perYear }) => [id, perYear])).toEqual([
      ['price', 10_000],
      ['upkeep', 4000],
      ['energy', 2 * 16 * 250 * 0.2],
      ['work', 0.5 * 250 * 30],
      ['false-rejects', 48 * 250 * 1.5],
    ])
    expect(falseRejectsPerDay).toBe(48)
    expect(sum).toBe(10_000 + 4000 + 1600 + 3750 + 18_000)
    expect(complete).toBe(true)
  })

  it('leaves out, by name, every line that waits for a blank box', () => {
    const fields = [...Object.keys(own), ...Object.keys(shared)]
    fc.assert(
      fc.property(fc.subarray(fields, { minLength: 1 }), (blank) => {
        const without = (costs: object) =>
          Object.fromEntries(Object.entries(costs).map(([k, v]) => [k, blank.includes(k) ? null : v]))
        const cost = yearlyCost(
          without(own) as unknown as OwnCosts,
          without(shared) as unknown as SharedCosts,
          pace,
        )
        expect(new Set(cost.lines.flatMap(({ waitsFor }) => waitsFor))).toEqual(new Set(blank))
        for (const { perYear, waitsFor } of cost.lines) expect(perYear === null).toBe(waitsFor.length > 0)
        expect(cost.complete).toBe(false)
      }),
    )
  })

  it('counts no packs where there are none', () => {
    const cost = yearlyCost(own, shared, { ...pace, packsPerMin: null })
    expect(cost.falseRejectsPerDay).toBeNull()
    expect(cost.lines.at(-1)).toEqual({ id: 'false-rejects', perYear: null, waitsFor: ['packsPerMin'] })
  })
})

describe('the boxes', () => {
  let table: Laid
  beforeAll(async () => {
    table = await laid()
  })

  it('start blank', () => {
    const sides = [table.side('p0.xray-dual'), table.side('p0.coil-single')]
    const { own: read, shared: all, problems } = readCosts(sides, {})
    expect(problems).toEqual([])
    expect(Object.values(all).every((value) => value === null)).toBe(true)
    expect(read.flatMap((one) => Object.values(one)).every((value) => value === null)).toBe(true)
  })

  it('take what people type, blank again included, and name what cannot be read', () => {
    const sides = [table.side('p0.xray-dual'), table.side('p0.coil-single')]
    const given = {
      daysPerYear: '250',
      perKWh: '0,21',
      'p0.xray-dual.price': '90 000',
      'p0.coil-single.years': '0',
      perWorkHour: 'a lot',
    }
    const { own: read, shared: all, problems } = readCosts(sides, given)
    expect(all).toMatchObject({ daysPerYear: 250, perKWh: 0.21, perWorkHour: null })
    expect(read[0]).toMatchObject({ price: 90_000 })
    expect(read[1]).toMatchObject({ years: null })
    expect(problems.map(({ path }) => path)).toEqual(['perWorkHour', 'p0.coil-single.years'])
    expect(problems[1]!.message).toBe('Spread over: give a number above 0 to 50; 0 was given')
  })
})
