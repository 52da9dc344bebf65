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
    for (const rule of book.rules.filter(({ evidence }) => evidence === 'law-opened'))
      expect([rule.id, rule.sources.map((id) => book.sources.get(id)?.text).join(' ')]).toEqual([
        rule.id,
        expect.stringMatching(/[Rr]ead (?:by )?\d{1,2} November 2026[^;]*; check currency/),
      ])
  })
  it('says of every source what it is, and marks what was not read as memory', () => {
    for (const { id, evidence, mark } of book.sources.values()) {
      expect([id, evidence]).not.toEqual([id, undefined])
      if (evidence?.endsWith('memory')) expect([id, mark]).toEqual([id, 'M'])
      if (evidence === 'law-opened') expect([id, mark]).toEqual([id, 'V'])
    }
  })
  it('rests no rule on more than one of its sources is', () => {
    const outside = [
      'law-opened',
      'law-from-memory',
      'guidance',
      'standard',
      'private-standard',
      'paper',
      'fact-sheet',
    ]
    for (const { id, evidence, sources } of book.rules)
      if (outside.includes(evidence))
        expect([id, ...sources.map((source) => book.sources.get(source)?.evidence)]).toContain(evidence)
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
  it('keeps the ids it gave up, each with one that is there', () => {
    const ids = book.rules.map(({ id }) => id)
    expect(book.renamed.size).toBeGreaterThan(0)
    for (const [old, now] of book.renamed)
      expect([old, ids.includes(old), ids.includes(now)]).toEqual([old, false, true])
  })
  it('holds words of the fact list only where the list closes them', () => {
    for (const rule of book.rules)
      for (const leaf of leavesOf(rule.conditions))
        if (FACTS.get(leaf.fact)?.type === 'string') expect(factOperand(leaf.value)).toBeNull()
  })
})
