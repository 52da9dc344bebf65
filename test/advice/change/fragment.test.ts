import { beforeAll, describe, expect, it } from 'vitest'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { wouldHaveFound } from '../../../src/advice/found/fragment.ts'
import { advise } from '../../../src/advise.ts'
import { parseFragment } from '../../../src/brief/index.ts'
import { type Fragment, type FragmentAnswer, fragmentAnswerSchema } from '../../../src/contract/index.ts'
import { briefOf, demoInput, QUICK, quickGiven } from '../demo.ts'

async function found(brief: unknown, fragment: Fragment): Promise<FragmentAnswer> {
  const parsed = parseFragment(brief, fragment)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return wouldHaveFound(parsed.brief, parsed.piece, parsed.given, quickGiven, loadRulebook())
}
const input = () => ({ ...demoInput('cheddar'), equipment: ['xray-single', 'coil-multi'] })
const chances = (answer: FragmentAnswer) =>
  new Map(answer.points[0]!.options.map(({ equipment, chance }) => [equipment, chance]))

describe('would we have found this', () => {
  let glass: FragmentAnswer
  beforeAll(async () => {
    glass = await found(input(), { material: 'glass_any', sizeMm: 2 })
  })

  it('answers in the shape of the contract, with what the chance rests on', () => {
    expect(fragmentAnswerSchema.parse(glass)).toEqual(glass)
    const xray = glass.points[0]!.options.find(({ equipment }) => equipment === 'xray-single')!
    expect(xray.because[0]).toMatch(/Nine in ten are expected .* this piece has 2\.0 mm/)
    expect(xray).toMatchObject({ installed: true, excluded: '' })
    expect(glass.questions.length).toBeGreaterThan(3)
  })
  it('gives each machine the chance its advice gives at that size, at the settings it runs at', async () => {
    const given = input()
    const line = await advise(briefOf(given), QUICK)
    const xray = line.points[0]!.options.find(({ equipment }) => equipment === 'xray-single')!
    const index = given.contaminants.findIndex(({ material }) => material === 'glass_any')
    const asked = line.points[0]!.options.length > 0 && index >= 0 ? given.contaminants[index]! : null
    const same = await found(given, { material: 'glass_any', sizeMm: asked!.mustFindMm! })
    expect(chances(same).get('xray-single')).toBeCloseTo(xray.findings[index]!.chanceAtMustFind!, 6)
    const option = same.points[0]!.options.find(({ equipment }) => equipment === 'xray-single')!
    expect(option.settings).toContain(`${xray.settings.kV} kV`)
  })
  it('grows with the size, and a coil never finds glass', async () => {
    const sizes = await Promise.all(
      [0.5, 1, 3].map(async (sizeMm) => chances(await found(input(), { material: 'glass_any', sizeMm }))),
    )
    const grown = sizes.map((one) => one.get('xray-single')!)
    expect(grown).toEqual([...grown].sort((a, b) => a - b))
    expect(grown[0]).toBeLessThan(grown[2]!)
    expect(sizes.map((one) => one.get('coil-multi'))).toEqual([0, 0, 0])
  })
  it('takes the line together between all misses alike and all independent', async () => {
    const { together, points } = await found(input(), { material: 'steel', sizeMm: 1 })
    const each = points[0]!.options.map(({ chance }) => chance!)
    expect(together!.atLeast).toBe(Math.max(...each))
    expect(together!.atMost).toBeCloseTo(1 - each.reduce((miss, p) => miss * (1 - p), 1), 12)
    expect(together!.atMost).toBeGreaterThanOrEqual(together!.atLeast)
    expect(together!.because).toMatch(/truth lies between.*look at different things/s)
  })
  it('leaves a machine out of the sum that cannot take the pack, and says why', async () => {
    const jar = { ...demoInput('sauce-jar'), equipment: ['xray-side', 'xray-single'] }
    const answer = await found(jar, { material: 'glass_any', sizeMm: 3 })
    const above = answer.points[0]!.options.find(({ equipment }) => equipment === 'xray-single')!
    expect(above.excluded).not.toBe('')
    expect(answer.together).toBeNull()
    const side = answer.points[0]!.options.find(({ equipment }) => equipment === 'xray-side')!
    expect(side.zones.map(({ state }) => state)).toContain('blind')
  })
  it('says what a machine upstream would have removed of it', async () => {
    const answer = await found(demoInput('hazelnuts'), { material: 'quartz', sizeMm: 3 })
    expect(answer.points[0]!.removals.map(({ equipment }) => equipment)).toContain('sieve')
    expect(answer.summary).toMatch(/could stand there/)
  })
})

describe('a fragment that cannot be read', () => {
  const problems = (fragment: unknown) => {
    const parsed = parseFragment(input(), fragment)
    return parsed.ok ? [] : parsed.problems
  }
  it.each([
    [{ sizeMm: 2 }, 'fragment.material'],
    [{ material: 'glass_any' }, 'fragment.sizeMm'],
    [{ material: 'glas_any', sizeMm: 2 }, 'fragment.material'],
    [{ material: 'glass_any', sizeMm: 2, shape: 'wire' }, 'fragment.lengthMm'],
    [{ material: 'glass_any', sizeMm: 900 }, 'fragment.sizeMm'],
    [{ material: 'glass_any', sizeMm: 2, shpe: 'wire' }, 'fragment.shpe'],
  ])('%j names %s', (fragment, path) => {
    expect(problems(fragment).map((problem) => problem.path)).toContain(path)
  })
  it('teaches: the nearest material, the nearest key', () => {
    expect(problems({ material: 'glas_any', sizeMm: 2 })[0]?.message).toContain('did you mean glass_any?')
    expect(problems({ material: 'glass_any', sizeMm: 2, shpe: 1 })[0]?.message).toContain(
      'did you mean shape?',
    )
  })
  it('names what is wrong with the brief beside it', () => {
    const parsed = parseFragment({ ...input(), points: [] }, { material: 'glass_any', sizeMm: 2 })
    expect(parsed.ok ? [] : parsed.problems.map(({ path }) => path)).toContain('points')
  })
})
