import { beforeAll, describe, expect, it } from 'vitest'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import type { AdviseGiven } from '../../../src/advice/change/advise-given.ts'
import { withValue } from '../../../src/advice/change/with-value.ts'
import { askerOf } from '../../../src/advice/decide/ask-records.ts'
import { missingInputs } from '../../../src/advice/missing/missing.ts'
import { effectOf } from '../../../src/advice/missing/missing-effect.ts'
import { advise } from '../../../src/advise.ts'
import type { Advice, BriefInput } from '../../../src/contract/index.ts'
import { briefOf, demoBrief, demoInput, QUICK, quickGiven } from '../demo.ts'

const { askFound } = askerOf(loadRulebook(), [])
const asking = (given: unknown) => advise(briefOf(given), { withoutChanges: true })

describe('what is missing', () => {
  let advice: Advice
  beforeAll(async () => {
    advice = await asking(demoInput('sauce-jar'))
  })
  it('is sorted by score, each with its field and what it would do', () => {
    const scores = advice.missing.map(({ score }) => score)
    expect(scores.length).toBeGreaterThan(0)
    expect(scores).toEqual([...scores].sort((a, b) => b - a))
    for (const { path, effect, label } of advice.missing)
      expect([path, effect, label].every((text) => text !== '')).toBe(true)
  })
  const UNEVENNESS = /^points\.0\.parts\.\d\.unevennessMm$/
  it('puts first the unevenness of the glass, which limits this jar, then whether a piece sinks', () => {
    expect(advice.missing.map(({ path }) => path)).toContain('product.stiff')
    expect(advice.missing[0]?.path).toMatch(UNEVENNESS)
    expect(advice.missing[0]?.effect).toMatch(/^Turns an answer: at 0\.\d+.*, .* meets? /)
  })
  it('says what really happens at that end of the range', async () => {
    const first = advice.missing.find(({ path }) => UNEVENNESS.test(path))
    const value = Number(/at (0\.\d+) /.exec(first!.effect)![1])
    const cut: BriefInput = { ...demoInput('sauce-jar'), equipment: ['xray-side-two-views'] }
    const [before, after] = await Promise.all([
      quickGiven(cut),
      quickGiven(withValue(cut, first!.path, value)),
    ])
    expect(effectOf(before!, after!).turned.length).toBeGreaterThan(0)
  })
  it('no longer holds what was entered', async () => {
    const { path } = advice.missing.find((one) => UNEVENNESS.test(one.path))!
    const entered = await asking(withValue(demoInput('sauce-jar'), path, 0.3))
    expect(entered.missing.map((one) => one.path)).not.toContain(path)
  })
})

describe('what is not known at all', () => {
  it('is scored by the rules it leaves open, in the field that would settle them', async () => {
    const given = demoInput('hazelnuts')
    delete given.points[1]!.packsPerMin
    delete given.points[1]!.checkIntervalMin
    const advice = await advise(briefOf(given), QUICK)
    const open = advice.trace.rules.filter(({ outcome }) => outcome === 'unknown')
    expect(open.length).toBeGreaterThan(0)
    const missing = await missingInputs(briefOf(given), [], advice.trace, async () => null, askFound)
    expect(missing.map(({ path }) => path)).toContain('points.1.packsPerMin')
    expect(missing.find(({ path }) => path === 'points.1.packsPerMin')?.effect).toMatch(
      /Not known, so .* open/,
    )
  })
  it('counts a size to find that nobody set as an open answer', async () => {
    const given = demoInput('cheddar')
    given.contaminants = [{ material: 'ss316' }]
    const missing = await missingInputs(
      briefOf(given),
      [],
      { facts: [], calculations: [], rules: [] },
      async () => null,
      askFound,
    )
    expect(missing).toEqual([expect.objectContaining({ path: 'contaminants.0.mustFindMm', score: 1 })])
  })
})

describe('what is tried first', () => {
  it('reaches the grain size of loose nuts at the point where the pattern is deep', async () => {
    const { missing } = await asking({ ...demoInput('hazelnuts'), equipment: ['xray-single'] })
    const grain = missing.find(({ path }) => path === 'product.grainMm')
    expect(grain?.effect).toMatch(/at 1\d\.\d mm/)
  })
  it('asks for the conductivity of wet food where the tables alone give it, and no longer once it is given', async () => {
    const { missing } = await asking(demoInput('mince'))
    expect(missing.find(({ path }) => path === 'product.conductivitySPerM')?.effect).toMatch(
      /metal detector .* at 0\.\d+ S\/m/,
    )
    const given = await asking(withValue(demoInput('mince'), 'product.conductivitySPerM', 0.4))
    expect(given.missing.map(({ path }) => path)).not.toContain('product.conductivitySPerM')
  })
})

it('looks at few machines and sizes, whatever the brief asks', async () => {
  const given = demoInput('hazelnuts')
  given.contaminants = Array.from({ length: 12 }, (_, i) => ({ material: 'quartz', mustFindMm: 2 + i / 4 }))
  given.equipment = ['xray-single', 'xray-dual']
  const brief = briefOf(given)
  const base = await advise(brief, QUICK)
  let work = 0
  const count: AdviseGiven = async (asked) => {
    work += asked.points.length * asked.contaminants.length * asked.equipment!.length
    return null
  }
  await missingInputs(brief, base.points, base.trace, count, askFound)
  expect(work).toBeGreaterThan(0)
  expect(work).toBeLessThanOrEqual(40)
})

it('is left out of quick advice', async () => {
  expect((await advise(demoBrief('mince'), QUICK)).missing).toEqual([])
})
