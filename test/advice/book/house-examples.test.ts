import { beforeAll, describe, expect, it } from 'vitest'
import {
  type ExampleReport,
  exampleKey,
  mergeBrief,
  runExamples,
} from '../../../src/advice/book/rule-examples.ts'
import { searchOf } from '../../../src/advice/book/rule-scope.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { type SaidOfExample, tryExample } from '../../../src/commands/try-example.ts'
import { heard } from './heard.ts'

const book = loadRulebook()

describe('the examples of the house book, through the whole of advise', () => {
  let report: ExampleReport
  const said = new Set<string>()
  /** What is said of an example. */
  const given = new Map<string, SaidOfExample>()
  beforeAll(async () => {
    const tried = tryExample(book)
    report = await runExamples(book, async (input, search, beside) => {
      const advice = await tried(input, search, beside)
      given.set(exampleKey(search, input, beside), advice)
      if (!('answer' in advice)) return advice
      const speaking = advice.points.flatMap((point) => [point, ...point.options])
      for (const { text } of [...speaking.flatMap(({ reasons }) => reasons), ...advice.cautions])
        said.add(text)
      return advice
    })
  }, 300_000)

  it.each(book.rules.map(({ id }) => id))('%s', (id) => {
    const results = report.results.filter(({ rule }) => rule === id)
    expect(results.length).toBeGreaterThanOrEqual(2)
    expect(results.filter(({ passed }) => !passed).map(({ example, message }) => [example, message])).toEqual(
      [],
    )
  })
  it.each(book.rules.map((rule) => [rule.id, rule] as const))('%s is heard where it fires', (id, rule) => {
    const example = rule.examples.find(({ fires }) => fires)!
    const brief = mergeBrief(book.baseBrief, example.brief)
    const advice = given.get(exampleKey(searchOf(rule), brief, example))!
    if (!('answer' in advice)) return expect(heard(advice)).toContain(id)
    const options = advice.points.flatMap((point) => point.options)
    const { type, params } = rule.event
    // A note is words on a size, without a link; of a machine that is ruled out only its exclusion is said.
    if (type === 'notes') {
      const [words = ''] = params.text.split('{')
      expect(options.flatMap(({ findings }) => findings.map(({ note }) => note)).join(' ')).toContain(
        words.trim(),
      )
    } else if (
      !(type === 'weakens' && options.some(({ whyNot }) => whyNot.some(({ kind }) => kind === 'rule')))
    )
      expect(heard(advice)).toContain(id)
  })
  it('leave no name and no hole in any text', () => {
    expect(said.size).toBeGreaterThan(book.rules.length / 2)
    expect([...said].filter((text) => /[{}]|\(no |(?<!kind )not known|NaN/.test(text))).toEqual([])
  })
  it('make every rule fire somewhere and stay quiet somewhere', () => {
    expect([report.neverFired, report.alwaysFired]).toEqual([[], []])
  })
})
