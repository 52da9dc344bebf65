import { describe, expect, it } from 'vitest'
import { advise } from '../../../src/advise.ts'
import type { BriefInput, Removal } from '../../../src/contract/index.ts'
import { briefOf, demoInput, QUICK } from '../demo.ts'

const adviceOn = (given: BriefInput) => advise(briefOf(given), QUICK)
const rulesOf = ({ reasons }: Removal) => reasons.map(({ rule }) => rule)

describe('rules judge what takes a share out', () => {
  it('says in the words of the rule why a machine is not for this, and keeps its share', async () => {
    const given = demoInput('milk-powder')
    given.product.ironMgPerKg = 80
    const [before, after] = await Promise.all([adviceOn(demoInput('milk-powder')), adviceOn(given)])
    const magnets = ({ points }: typeof before) => points[0]!.removals.filter((r) => r.equipment === 'magnet')
    expect(magnets(before).map(({ unsuitable }) => unsuitable)).toEqual(['', '', ''])
    for (const magnet of magnets(after)) {
      expect(magnet.unsuitable).toMatch(/^The food carries 80 mg\/kg of iron powder here/)
      expect(rulesOf(magnet)).toContain('magnet-takes-the-iron-in-the-food')
      expect(magnet.reasons.find(({ type }) => type === 'excludes')?.decisive).toBe(true)
    }
    const steel = magnets(after)[1]!
    expect(steel.shareRemoved[1]).toBeGreaterThan(0)
  })

  it('shows what a rule asks with the contaminant it speaks of', async () => {
    const { points } = await adviceOn(demoInput('hazelnuts'))
    const grave = points[0]!.removals.filter((row) => rulesOf(row).includes('share-is-no-control'))
    expect(grave.length).toBeGreaterThan(0)
    for (const row of grave)
      for (const { rule, contaminant } of row.reasons)
        if (rule === 'share-is-no-control') expect(contaminant).toBe(row.contaminant)
  })

  it('judges the mesh a brief gives by the largest grain of its food', async () => {
    const given = demoInput('hazelnuts')
    given.equipment = ['xray-single', { id: 'ours', family: 'sieve', meshMm: 10 }]
    const narrow = await adviceOn(given)
    given.equipment = ['xray-single', { id: 'ours', family: 'sieve', meshMm: 40 }]
    const wide = await adviceOn(given)
    expect(narrow.points[0]!.removals[0]?.unsuitable).toMatch(/does not clear this food/)
    expect(wide.points[0]!.removals[0]?.unsuitable).toBe('')
  })

  it('never ranks them, and every reason leads to a trace with its conditions', async () => {
    const { points, trace } = await adviceOn(demoInput('beans'))
    const keys = new Map(trace.rules.map((rule) => [rule.key, rule]))
    const rows = points.flatMap(({ removals }) => removals)
    expect(rows.length).toBeGreaterThan(0)
    for (const row of rows) {
      expect(row).not.toHaveProperty('rank')
      for (const reason of row.reasons) expect(keys.get(reason.trace)?.outcome).toBe('fired')
    }
    const shares = trace.facts.filter(({ id }) => id === 'removal.mostPct')
    const calculations = new Set(trace.calculations.map(({ id }) => id))
    expect(shares.length).toBeGreaterThan(0)
    for (const { calculation } of shares) expect(calculations.has(calculation!)).toBe(true)
  })
})
