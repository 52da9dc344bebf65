import { describe, expect, it } from 'vitest'
import { mergeBrief, runExamples } from '../../../src/advice/book/rule-examples.ts'
import { loadRulebook, type Rulebook } from '../../../src/advice/book/rulebook.ts'
import { advise } from '../../../src/advise.ts'
import type { Advice } from '../../../src/contract/index.ts'
import { briefOf, QUICK } from '../demo.ts'

const book = loadRulebook()

/** The book asked of its examples (one firing example of one rule), judged by the book with or without it. */
const failing = (id: string, by: Rulebook) => {
  const rule = book.rules.find((one) => one.id === id)!
  const example = rule.examples.find(({ fires }) => fires)!
  return runExamples({ ...book, rules: [{ ...rule, examples: [example] }] }, (input) =>
    advise(briefOf(input), { ...QUICK, book: by }),
  ).then(({ failures }) => failures.map(({ rule: of, message }) => [of, message]))
}

describe('taking any one rule out of the book makes an example of it fail', () => {
  it.each(book.rules.map(({ id }) => id))('%s', async (id) => {
    const without: Rulebook = { ...book, rules: book.rules.filter((rule) => rule.id !== id) }
    expect(await failing(id, book)).toEqual([])
    expect(await failing(id, without)).toEqual([[id, 'the rule was not asked anywhere the example names']])
  })
})

describe('a rule that fires is heard, and without it the advice says something else', () => {
  it.each(book.rules.map((rule) => [rule.id, rule] as const))('%s', async (id, rule) => {
    const given = mergeBrief(book.baseBrief, rule.examples.find(({ fires }) => fires)!.brief)
    const by = (used: Rulebook) => advise(briefOf(given), { ...QUICK, book: used })
    const without: Rulebook = { ...book, rules: book.rules.filter((one) => one.id !== id) }
    const [before, after] = await Promise.all([by(book), by(without)])
    expect(heard(before)).toContain(id)
    expect(heard(after)).not.toContain(id)
  })
})

/** Rules a reader meets: the answer, reasons and grounds of machines and of what removes, cautions, the records. */
function heard({ answer, combination, points, cautions, register, checks }: Advice): string[] {
  const rows = points.flatMap(({ options, removals }) => [
    ...options.flatMap(({ grounds, reasons }) => [...grounds, ...reasons]),
    ...removals.flatMap(({ reasons }) => reasons),
  ])
  return [
    ...rows.map(({ rule }) => rule),
    ...cautions.map(({ id }) => id),
    ...rulesNamed({ answer, grounds: combination.grounds, register, checks }),
  ]
}

/** Every `rule` named anywhere in a part of the advice. */
function rulesNamed(part: unknown): string[] {
  if (typeof part !== 'object' || part === null) return []
  return Object.entries(part).flatMap(([key, value]) =>
    /^(?:rule|questionRule)$/.test(key) && typeof value === 'string' ? [value] : rulesNamed(value),
  )
}
