import { beforeAll, describe, expect, it } from 'vitest'
import { type ExampleReport, runExamples } from '../../../src/advice/book/rule-examples.ts'
import { advisedByHouse, book } from './advised-by-house.ts'

describe('the examples of the house book, through the whole of advise', () => {
  let report: ExampleReport
  const said = new Set<string>()
  beforeAll(async () => {
    report = await runExamples(book, async (input) => {
      const advice = await advisedByHouse(input)
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
  it('leave no name and no hole in any text', () => {
    expect(said.size).toBeGreaterThan(book.rules.length / 2)
    expect([...said].filter((text) => /[{}]|\(no |not known|NaN/.test(text))).toEqual([])
  })
  it('make every rule fire somewhere and stay quiet somewhere', () => {
    expect([report.neverFired, report.alwaysFired]).toEqual([[], []])
  })
})
