import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { judge } from '../../../src/advice/decide/judge.ts'
import { toReason, toRuleTrace } from '../../../src/advice/say/reason.ts'
import type { AssessedOption } from '../../../src/advice/stages.ts'
import { conditionTraceSchema, reasonSchema, ruleTraceSchema } from '../../../src/contract/index.ts'
import { materials } from '../../../src/reference/index.ts'
import { SAMPLE_MACHINE, sampleAssessment, sampleBrief } from '../sample.ts'

const book = loadRulebook()
const brief = sampleBrief({
  contaminants: [
    { material: 'quartz', mustFindMm: 3 },
    { material: 'nut_shell', mustFindMm: 8 },
  ],
})
const option: AssessedOption = {
  family: 'xray',
  pointIndex: 0,
  machine: SAMPLE_MACHINE,
  assessment: sampleAssessment(),
}

/** Asked anew for each test, so that none speaks of what another one asked. */
const asked = async () => {
  const judged = await judge(book, brief, [option], materials)
  return { ...judged, fired: judged.outcomes.filter(({ outcome }) => outcome === 'fired') }
}

describe('judge', () => {
  it('asks each rule once at each of its places', async () => {
    const { outcomes } = await asked()
    const placesOf = (rule: string) =>
      outcomes
        .filter((outcome) => outcome.rule === rule)
        .map(({ pointIndex, equipment, contaminant }) => [pointIndex, equipment, contaminant])
    expect(placesOf('special-consumers')).toEqual([
      [null, null, 0],
      [null, null, 1],
    ])
    expect(placesOf('gap-for-one-reject')).toEqual([[0, null, null]])
    expect(placesOf('gb-registration')).toEqual([[null, null, null]])
    expect(placesOf('grain-limits-one-energy')).toEqual([
      [0, 'sample-machine', 0],
      [0, 'sample-machine', 1],
    ])
  })
  it('lets the facts decide', async () => {
    const { fired } = await asked()
    expect(fired.map(({ rule }) => rule)).toEqual(expect.arrayContaining(['gb-registration', 'close-call']))
    expect(fired.map(({ rule }) => rule)).not.toContain('authorisation-eu')
    expect(fired.filter(({ rule }) => rule === 'grain-limits-one-energy').map((o) => o.contaminant)).toEqual([
      0,
    ])
  })
  it('says not applicable of a contaminant nobody assessed', async () => {
    const { outcomes } = await asked()
    const there = outcomes.find(
      ({ rule, contaminant }) => rule === 'grain-limits-one-energy' && contaminant === 1,
    )
    expect(there?.outcome).toBe('not-applicable')
  })
  it('keeps every fact once in its scope, each calculation once', async () => {
    const { facts, calculations } = await asked()
    const keys = facts.map(({ scope, id }) => `${scope}: ${id}`)
    expect(new Set(keys).size).toBe(keys.length)
    expect(new Set(calculations.map(({ id }) => id)).size).toBe(calculations.length)
    expect(new Set(facts.map(({ scope }) => scope))).toEqual(
      new Set(['brief', 'p0', 'c0', 'c1', 'p0.sample-machine', 'p0.sample-machine.c0']),
    )
  })
  it('gives traces and reasons in the shape of the contract', async () => {
    const { outcomes, fired } = await asked()
    for (const outcome of outcomes) {
      expect(ruleTraceSchema.parse(toRuleTrace(outcome, brief)).id).toBe(outcome.rule)
      conditionTraceSchema.parse(outcome.conditions)
    }
    for (const outcome of fired) expect(reasonSchema.parse(toReason(outcome, false)).text).not.toBe('')
  })
  it('leaves no hole in a text that was filled', async () => {
    const { fired } = await asked()
    for (const { rule, text } of fired)
      expect([rule, text]).toEqual([rule, expect.not.stringMatching(/[{}]|\(no /)])
  })
  it('asks rules on the brief and the point where there is no machine at all', async () => {
    const alone = await judge(book, brief, [], materials)
    expect(new Set(alone.outcomes.map(({ scope }) => scope))).toEqual(
      new Set(['brief', 'brief:contaminant', 'point', 'point:contaminant']),
    )
  })
})
