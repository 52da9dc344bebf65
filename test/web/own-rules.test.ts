import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import type { Advice } from '../../src/contract/index.ts'
import { createApp } from '../../src/web/app.ts'
import { packBrief } from '../../src/web/asked/packed-brief.ts'
import { RULE, ruleFolder } from '../advice/book/rule-folder.ts'

const LOW = { ...RULE, appliesTo: ['xray', 'coil'], event: { ...RULE.event, type: 'requires' } }
const bars = demos.find(({ id }) => id === 'mince')!.brief
const packed = packBrief(bars)

describe('pages and API under a company’s own rules', () => {
  const app = createApp(undefined, [ruleFolder({ rules: [LOW] })])
  const page = async (path: string) => (await app.request(path)).text()

  it('list its rules in the rule book, with the book each comes from and what changed in each', async () => {
    const html = await page('/rules')
    expect(html).toContain('The food is tall')
    expect(html).toContain('from the trial book book')
    expect(html).toContain('trial book 7')
    expect(await page('/rules/tall-food')).toContain('The food is [height of the food] high.')
  })

  it('give advice by it, and every reason says which book it comes from', async () => {
    const response = await app.request('/api/advice', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(bars),
    })
    const advice = (await response.json()) as Advice
    expect(advice.versions.rules).toMatch(/ \+ trial book 7$/)
    const reasons = advice.points.flatMap(({ options }) => options.flatMap((option) => option.reasons))
    const own = reasons.filter(({ rule }) => rule === 'tall-food')
    expect(own.map(({ book, text }) => [book, text])).toContainEqual([
      'trial book',
      'The food is 76 mm high.',
    ])
    expect(reasons.some(({ book }) => book !== 'trial book')).toBe(true)
    const { equipment } = advice.points[0]!.options.find(({ reasons: own }) =>
      own.some((one) => one.rule === 'tall-food'),
    )!
    expect(await page(`/advice/part?b=${packed}&part=why&point=0&equipment=${equipment}`)).toContain(
      'from the trial book book',
    )
  })

  it('lay what is pasted over that book, not over the bare one', async () => {
    const form = new URLSearchParams({
      pasted: JSON.stringify({ name: 'pasted', thresholds: [{ ...THRESHOLD_HIGHER }] }),
    })
    const response = await app.request(`/advice/difference?b=${packed}`, { method: 'POST', body: form })
    const html = await response.text()
    expect(response.status).toBe(200)
    expect(html).toContain('trial book 7')
    expect(html).toContain('The food is tall')
  })
})

const THRESHOLD_HIGHER = {
  id: 'high',
  value: 500,
  unit: 'mm',
  label: 'high food',
  source: 'a-source',
  evidence: 'judgement',
}

it('a folder that is not in order stops the start and names what is wrong', () => {
  expect(() => createApp(undefined, [ruleFolder({ rules: [{ ...RULE, sources: ['nowhere'] }] })])).toThrow(
    /nowhere/,
  )
})

it('without own rules the book is the house’s', async () => {
  expect(await (await createApp().request('/rules')).text()).not.toContain('from the gritwise book')
})
