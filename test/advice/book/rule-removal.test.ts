import { beforeAll, describe, expect, it } from 'vitest'
import { mergeBrief, runExamples } from '../../../src/advice/book/rule-examples.ts'
import { loadRulebook, type Rulebook } from '../../../src/advice/book/rulebook.ts'
import { advise } from '../../../src/advise.ts'
import type { Advice } from '../../../src/contract/index.ts'
import { sweep } from '../../sweep.ts'
import { briefOf, QUICK } from '../demo.ts'
import { heard } from './heard.ts'

const book = loadRulebook()
const every = sweep(7, 1)
/** Every so many rules, beginning with the first. */
const some = book.rules.filter((_, at) => at % every === 0)

describe.each(some.map((rule) => [rule.id, rule] as const))('taking %s out of the book', (id, rule) => {
  const example = rule.examples.find(({ fires }) => fires)!
  const given = mergeBrief(book.baseBrief, example.brief)
  const without: Rulebook = { ...book, rules: book.rules.filter((one) => one.id !== id) }
  let after: Advice
  beforeAll(async () => {
    after = await advise(briefOf(given), { ...QUICK, book: without })
  })

  it('makes an example of it fail', async () => {
    const asked = { ...book, rules: [{ ...rule, examples: [example] }] }
    const { failures } = await runExamples(asked, () => after)
    expect(failures.map(({ rule: of, message }) => [of, message])).toEqual([
      [id, 'the rule was not asked anywhere the example names'],
    ])
  })
  it('silences it: the advice says something else', () => {
    expect(heard(after)).not.toContain(id)
  })
})
