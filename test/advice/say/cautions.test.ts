import { describe, expect, it } from 'vitest'
import { cautionsFrom } from '../../../src/advice/say/cautions.ts'
import { nameWords } from '../../../src/advice/say/words.ts'
import { advise } from '../../../src/advise.ts'
import { materials } from '../../../src/reference/index.ts'
import { briefOf, demoInput, QUICK } from '../demo.ts'

const brief = briefOf(demoInput('hazelnuts'))
const fired = (text: string, contaminant: number | null, pointIndex: number | null = null) => ({
  rule: 'some-rule',
  text,
  sources: ['here'],
  contaminant,
  pointIndex,
})

describe('one caution per rule', () => {
  it('names every contaminant where the texts differ in the name alone', () => {
    const label = (c: number) => materials.get(brief.contaminants[c]!.material)!.label
    const cautions = cautionsFrom(
      brief,
      [0, 1, 3].map((c) => fired(`${label(c)}: mind it.`, c)),
    )
    expect(cautions.map(({ text }) => text)).toEqual([
      `${label(0)}: mind it. (also: ${nameWords(brief, 1)} and ${nameWords(brief, 3)})`,
    ])
  })
  it('keeps what differs, and says once what does not', () => {
    const alike = cautionsFrom(brief, [fired('The food is wet.', 0), fired('The food is wet.', 3)])
    expect(alike[0]?.text).toBe(`Stone and ${nameWords(brief, 3)}: The food is wet.`)
    const unlike = cautionsFrom(brief, [fired('From 3 mm on.', 0), fired('From 5 mm on.', 3)])
    expect(unlike[0]?.text).toMatch(/From 3 mm on\. .*From 5 mm on\./)
  })
  it('tells points apart only where it says something else there', () => {
    expect(cautionsFrom(brief, [fired('Cold.', null, 0), fired('Cold.', null, 1)])[0]?.text).toBe('Cold.')
    expect(cautionsFrom(brief, [fired('Cold.', null, 0), fired('Warm.', null, 1)])[0]?.text).toBe(
      '“sorting belt”: Cold. “after packing”: Warm.',
    )
  })
})

it('on a whole advice each contaminant a rule fired for is named in its caution', async () => {
  const given = demoInput('milk-powder')
  const advice = await advise(briefOf(given), QUICK)
  const about = advice.trace.rules.filter((r) => r.id === 'special-consumers' && r.outcome === 'fired')
  expect(about.map(({ contaminant }) => contaminant).length).toBeGreaterThan(1)
  const caution = advice.cautions.filter(({ id }) => id === 'special-consumers')
  expect(caution).toHaveLength(1)
  for (const { contaminant } of about) {
    const label = nameWords(briefOf(given), contaminant!).replace(/ sphere$/, '')
    expect(caution[0]?.text.toLowerCase()).toContain(label.toLowerCase())
  }
})

it('among the cautions of one machine each rule stands once, with every contaminant it warns of', async () => {
  const given = demoInput('hazelnuts')
  given.contaminants = ['pe', 'wood', 'ptfe'].map((material) => ({ material, mustFindMm: 3 }))
  given.equipment = ['xray-single']
  const { points, trace } = await advise(briefOf(given), QUICK)
  for (const [at, { options }] of points.entries())
    for (const { cautions, equipment } of options) {
      const ids = cautions.map(({ id }) => id)
      expect(ids).toEqual([...new Set(ids)])
      const warned = trace.rules.filter(
        (rule) =>
          rule.type === 'warns' &&
          rule.outcome === 'fired' &&
          rule.key.startsWith(`p${at}.${equipment}.`) &&
          rule.contaminant !== null,
      )
      expect(warned.length).toBeGreaterThan(1)
      for (const { id, contaminant } of warned) {
        const said = cautions.find((caution) => caution.id === id)?.text.toLowerCase()
        expect(said).toContain(nameWords(briefOf(given), contaminant!).toLowerCase())
      }
    }
})
