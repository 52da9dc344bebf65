import { beforeAll, describe, expect, it } from 'vitest'
import { mergeBrief, runExamples } from '../../../src/advice/book/rule-examples.ts'
import type { Rulebook } from '../../../src/advice/book/rulebook.ts'
import { advise } from '../../../src/advise.ts'
import type { Advice } from '../../../src/contract/index.ts'
import { briefOf, QUICK } from '../demo.ts'
import { advisedByHouse, book } from './advised-by-house.ts'

describe.each(book.rules.map((rule) => [rule.id, rule] as const))('taking %s out of the book', (id, rule) => {
  const example = rule.examples.find(({ fires }) => fires)!
  const given = mergeBrief(book.baseBrief, example.brief)
  const without: Rulebook = { ...book, rules: book.rules.filter((one) => one.id !== id) }
  let before: Advice
  let after: Advice
  beforeAll(async () => {
    before = await advisedByHouse(given)
    after = await advise(briefOf(given), { ...QUICK, book: without })
  })
  /** The book asked of this one example, judged by an advice. */
  const failing = (advice: Advice) =>
    runExamples({ ...book, rules: [{ ...rule, examples: [example] }] }, () => advice).then(({ failures }) =>
      failures.map(({ rule: of, message }) => [of, message]),
    )

  it('makes an example of it fail', async () => {
    expect(await failing(before)).toEqual([])
    expect(await failing(after)).toEqual([[id, 'the rule was not asked anywhere the example names']])
  })
  it('silences it: it was heard, and the advice says something else', () => {
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
