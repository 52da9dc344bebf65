import { beforeAll, describe, expect, it } from 'vitest'
import { type AssessedOption, judge } from '../../src/advice/judge.ts'
import { toRuleTrace } from '../../src/advice/reason.ts'
import { type ExampleReport, runExamples } from '../../src/advice/rule-examples.ts'
import { loadRulebook } from '../../src/advice/rulebook.ts'
import { parseBrief } from '../../src/brief/parse.ts'
import type { Advice, XrayMachine } from '../../src/contract/index.ts'
import { archetypes, materials } from '../../src/reference/index.ts'
import { assessXray } from '../../src/xray/assess.ts'

const book = loadRulebook()

/** From brief to rule trace over the x-ray machines it names: parse, physics, rules. */
async function traceOnly(input: unknown): Promise<Advice> {
  const parsed = parseBrief(input)
  if (!parsed.ok)
    throw new Error(parsed.problems.map(({ path, message }) => `${path}: ${message}`).join('; '))
  const { brief } = parsed
  const machines = brief.equipment
    .map((item) => (typeof item === 'string' ? archetypes.get(item) : item))
    .filter((machine): machine is XrayMachine & NonNullable<typeof machine> => machine?.family === 'xray')
  const options = brief.points.flatMap((point, pointIndex) =>
    machines.map((machine): AssessedOption => {
      const prefix = `p${pointIndex}.${machine.id}`
      const assessment = assessXray({ machine, point, contaminants: brief.contaminants, prefix })
      return { family: 'xray', pointIndex, machine, assessment }
    }),
  )
  const { outcomes } = await judge(book, brief, options, materials)
  return { trace: { rules: outcomes.map((outcome) => toRuleTrace(outcome, brief)) } } as unknown as Advice
}

describe('the examples of the house book, with the physics', () => {
  let report: ExampleReport
  beforeAll(async () => {
    report = await runExamples(book, traceOnly)
  }, 120_000)

  it.each(book.rules.map(({ id }) => id))('%s', (id) => {
    const results = report.results.filter(({ rule }) => rule === id)
    expect(results.length).toBeGreaterThanOrEqual(2)
    expect(results.filter(({ passed }) => !passed).map(({ example, message }) => [example, message])).toEqual(
      [],
    )
  })
  it('make every rule fire somewhere and stay quiet somewhere', () => {
    expect([report.neverFired, report.alwaysFired]).toEqual([[], []])
  })
})
