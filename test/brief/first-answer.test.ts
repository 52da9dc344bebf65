import { expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import { enteredOf } from '../../src/brief/usual/usual-contaminants.ts'

const least = { product: { food: 'chicken_breast' }, points: [{ heightMm: 30, speedMPerMin: 30 }] }
const parsed = (brief: unknown) => {
  const read = parseBrief(brief)
  if (!read.ok) throw new Error(read.problems.map(({ path, message }) => `${path}: ${message}`).join('; '))
  return read.brief
}

it('food, thickness and speed are a brief: the rest is assumed, each with its mark', () => {
  const brief = parsed(least)
  expect(brief.contaminants.map(({ material }) => material)).toContain('glass_any')
  expect(brief.contaminants.every(({ mustFindMm }) => mustFindMm === null)).toBe(true)
  const marks = brief.assumed.map(({ path }) => path)
  for (const path of ['contaminants', 'points.0.widthMm', 'points.0.lengthMm']) expect(marks).toContain(path)
  expect(enteredOf(brief)).toEqual(least)
})

it('assumes bone where the food has bones that do not belong in it, and only there', () => {
  const materials = (product: object) =>
    parsed({ ...least, product }).contaminants.map(({ material }) => material)
  expect(materials({ food: 'chicken_breast' })).toContain('bone_any')
  expect(materials({ food: 'chicken_breast', boneIn: true })).not.toContain('bone_any')
  expect(materials({ food: 'hazelnut' })).not.toContain('bone_any')
})

it('contaminants that are named are taken as they are, and assumed no longer', () => {
  const brief = parsed({ ...least, contaminants: [{ material: 'quartz', mustFindMm: 3 }] })
  expect(brief.contaminants).toHaveLength(1)
  expect(brief.assumed.map(({ path }) => path)).not.toContain('contaminants')
  expect(enteredOf(brief)).toEqual(brief.given)
})

it('understands the words of people for contaminants, and says what it takes for those that name no kind', () => {
  const words = ['stone', 'Glass', 'bone', 'rubber', 'wood', 'steel', 'metal', 'plastic']
  const brief = parsed({ ...least, contaminants: words.map((material) => ({ material, mustFindMm: 3 })) })
  expect(brief.contaminants.map(({ material }) => material)).toEqual([
    ...['stone_any', 'glass_any', 'bone_any', 'rubber_any', 'wood', 'steel', 'stainless_any', 'pp'],
  ])
  const taken = brief.assumed.filter(({ path }) => path.endsWith('.material')).map(({ path }) => path)
  expect(taken).toEqual(['contaminants.6.material', 'contaminants.7.material'])
  expect(parsed(enteredOf(brief)).assumed, 'in an address too').toEqual(brief.assumed)
})

it('an empty list is a mistake that says what to do', () => {
  const read = parseBrief({ ...least, contaminants: [] })
  expect(read).toMatchObject({ ok: false, problems: [{ path: 'contaminants' }] })
})
