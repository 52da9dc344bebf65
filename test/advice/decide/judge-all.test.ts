import { describe, expect, it } from 'vitest'
import { assess } from '../../../src/advice/assess/assess.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { judge, judgeAll } from '../../../src/advice/decide/judge.ts'
import type { AssessedOption } from '../../../src/advice/stages.ts'
import { materials } from '../../../src/reference/index.ts'
import { SAMPLE_MACHINE, sampleAssessment, sampleBrief } from '../sample.ts'

const book = loadRulebook()
/** Wheat flour on a belt and in a pack, looked at with a metal detector; a sieve and a magnet take pieces out. */
const brief = sampleBrief({
  product: { food: 'flour' },
  points: [
    {
      name: 'drop',
      stage: 'free-fall',
      heightMm: 100,
      widthMm: 100,
      lengthMm: 200,
      massG: null,
      parts: null,
    },
    { name: 'bags', heightMm: 60, widthMm: 120, lengthMm: 200, massG: null, speedMPerMin: 20, parts: null },
  ].map((point) => ({ packsPerMin: null, speedMPerMin: 60, ...point })),
  contaminants: [
    { material: 'steel', mustFindMm: 2 },
    { material: 'bone_any', mustFindMm: 4 },
  ],
  equipment: ['coil-free-fall', 'coil-single', 'static-field', 'magnet', 'sieve'],
})

describe('every rule asked of all that was assessed', () => {
  const places = async () => {
    const assessed = assess(brief)
    const judged = await judgeAll(book, assessed)
    const of = (equipment: string | null) => [
      ...new Set(
        judged.outcomes
          .filter((one) => one.equipment === equipment)
          .map(({ pointIndex, scope, contaminant }) => `${pointIndex} ${scope} ${contaminant}`),
      ),
    ]
    return { assessed, judged, of }
  }
  it('the brief and each point once, and once for each contaminant', async () => {
    const { of } = await places()
    expect(of(null)).toEqual([
      'null brief null',
      'null brief:contaminant 0',
      'null brief:contaminant 1',
      '0 point null',
      '0 point:contaminant 0',
      '0 point:contaminant 1',
      '1 point null',
      '1 point:contaminant 0',
      '1 point:contaminant 1',
    ])
  })
  it('a detector where it stands, and what takes pieces out only where it can work', async () => {
    const { of, assessed } = await places()
    expect(of('coil-free-fall')).toEqual(['0 coil null', '0 coil:contaminant 0', '0 coil:contaminant 1'])
    expect(of('coil-single')[0]).toBe('1 coil null')
    expect(of('static-field')[0]).toBe('1 static-field null')
    const able = assessed.removals.flatMap((there, at) =>
      there.filter(({ applicable }) => applicable).map(({ equipment }) => `${at} ${equipment}`),
    )
    expect(able).toEqual(['0 magnet', '0 sieve'])
    expect(of('sieve').every((place) => place.startsWith('0 sieve'))).toBe(true)
    expect(of('magnet')[0]).toBe('0 magnet null')
  })
  it('facts of each machine come from its own physics', async () => {
    const { judged } = await places()
    const scopes = (start: string) =>
      new Set(judged.facts.filter(({ id }) => id.startsWith(start)).map(({ scope }) => scope.split('.')[1]))
    expect(scopes('coil.')).toEqual(new Set(['coil-free-fall', 'coil-single', 'static-field']))
    expect(scopes('removal.')).toEqual(new Set(['magnet', 'sieve']))
  })
  it('hands on what was assessed, with the book and what came of it', async () => {
    const { assessed, judged } = await places()
    expect(judged).toMatchObject({ brief, removals: assessed.removals, detectors: assessed.detectors })
    expect(judged.book).toBe(book)
  })
  it('refuses a machine at a point that the brief does not have', async () => {
    const option: AssessedOption = {
      family: 'xray',
      pointIndex: 7,
      machine: SAMPLE_MACHINE,
      assessment: sampleAssessment(),
    }
    await expect(judge(book, brief, [option], materials)).rejects.toThrow(
      'option sample-machine names the point 7',
    )
  })
})
