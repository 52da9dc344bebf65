import { describe, expect, it } from 'vitest'
import { factOperand, leavesOf } from '../../../src/advice/book/condition.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { FACTS } from '../../../src/advice/facts/list/fact-list.ts'
import { FAN_HALF_ANGLE_DEG } from '../../../src/xray/refusals.ts'

const book = loadRulebook()

describe('the house rule book', () => {
  it('passes its lint and is worth the name', () => {
    expect(book.rules.length).toBeGreaterThanOrEqual(105)
    expect(book.version).toMatch(/^gritwise \d+\.\d+\.\d+$/)
    expect(book.changelog[0]?.changes.length).toBeGreaterThan(0)
  })
  it('says of every source from memory that it is to be checked', () => {
    for (const source of book.sources.values())
      if (source.mark === 'M')
        expect([source.id, source.text]).toEqual([source.id, expect.stringMatching(/from memory, check/)])
  })
  it('says of every law when it was read', () => {
    for (const rule of book.rules.filter(({ evidence }) => evidence === 'regulation'))
      expect(rule.sources.map((id) => book.sources.get(id)?.text).join(' ')).toMatch(
        /[Rr]ead 2026; check currency/,
      )
    for (const rule of book.rules.filter(({ file }) => file === 'radiation.json'))
      if (rule.evidence === 'regulation') expect(rule.event.params.text).toMatch(/Read 2026; check currency/)
  })
  it('never gives the US a dose figure that was not read', () => {
    const us = book.rules.find(({ id }) => id === 'cabinet-rules-us')
    expect(JSON.stringify(us)).not.toMatch(/\bm?Gy\b/)
    expect(book.sources.get('cfr-179-21')?.text).not.toMatch(/\bm?Gy\b/)
  })
  it('has no source that nobody cites', () => {
    const cited = new Set([
      ...book.rules.flatMap(({ sources }) => sources),
      ...[...book.thresholds.values()].map(({ source }) => source),
    ])
    expect([...book.sources.keys()].filter((id) => !cited.has(id))).toEqual([])
  })
  it('speaks to a reader in whole sentences', () => {
    for (const rule of book.rules)
      for (const said of [rule.event.params.text, rule.because, rule.exception])
        expect([rule.id, said]).toEqual([rule.id, expect.stringMatching(/^[^\n]+[.!?]$/)])
  })
  it('opens the fan no wider than the physics does', () => {
    expect(book.thresholds.get('fanHalfAngle')?.value).toBe(FAN_HALF_ANGLE_DEG)
  })
  it('holds words of the fact list only where the list closes them', () => {
    for (const rule of book.rules)
      for (const leaf of leavesOf(rule.conditions))
        if (FACTS.get(leaf.fact)?.type === 'string') expect(factOperand(leaf.value)).toBeNull()
  })
})
