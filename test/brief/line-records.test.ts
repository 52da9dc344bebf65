import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { readForm } from '../../src/brief/form/form.ts'
import { removeRow } from '../../src/brief/form/form-rows.ts'
import { writeForm } from '../../src/brief/form/form-writing.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { BriefInput } from '../../src/contract/index.ts'

const [hazelnuts] = demos.map((demo) => demo.brief)
const brief = (over: Partial<BriefInput>): BriefInput => ({ ...hazelnuts!, ...over })
const problems = (over: Partial<BriefInput>) => {
  const parsed = parseBrief(brief(over))
  return parsed.ok ? [] : parsed.problems
}

describe('finds, entries, places and answers in a brief', () => {
  it('are kept whole by the form', () => {
    const given = brief({
      points: hazelnuts!.points.map((point) => ({
        ...point,
        afterStep: 'packing',
        reject: { type: 'pusher', distanceToRejectMm: 900, cycleMs: 400 },
      })),
      contaminants: hazelnuts!.contaminants.map((one) => ({
        ...one,
        entries: [{ step: 'delivery', share: 0.7 }, { step: 'weighing' }],
      })),
      finds: [{ contaminant: 0, point: 'after packing', packs: 19_200_000, found: 31, by: 'detector' }],
      answers: [{ question: 'c0.p1.q7', answer: 'yes', because: 'pallets stay 70 minutes' }],
      confirmed: [{ what: 'c0.median', by: 'quality', date: '2026-11-27' }],
    })
    expect(readForm(writeForm(given)).input).toEqual(given)
    expect(problems(given)).toEqual([])
  })

  it.each([
    [{ finds: [{ contaminant: 9, packs: 10, found: 1 }] }, 'finds.0.contaminant', /contaminants 0 to 5; 9/],
    [{ finds: [{ contaminant: 0, point: 'roof', packs: 10, found: 1 }] }, 'finds.0.point', /sorting belt/],
    [{ finds: [{ contaminant: 0, packs: 10, found: 11 }] }, 'finds.0.found', /at most as many/],
    [{ finds: [{ contaminant: 0, packs: 10, found: 2, events: 3 }] }, 'finds.0.events', /1 to the number/],
    [
      { answers: [{ question: 'c0.p1.q9', answer: 'yes', because: 'so it is' }] },
      'answers.0.question',
      /"q9" is not asked there; asked: q1, q2/,
    ],
    [
      { answers: [{ question: 'c0.p7.q1', answer: 'yes', because: 'so it is' }] },
      'answers.0.question',
      /points 0 to 1; p7/,
    ],
    [
      { answers: [{ question: 'weather', answer: 'fine', because: 'seen' }] },
      'answers.0.question',
      /look like/,
    ],
    [{ answers: [{ question: 'plant.days', answer: '250', because: '' }] }, 'answers.0.because', /reason/],
  ] as [Partial<BriefInput>, string, RegExp][])('names what does not exist: %j', (over, path, message) => {
    const [first] = problems(over)
    expect(first?.path).toBe(path)
    expect(first?.message).toMatch(message)
  })

  it('steps have to be steps of the flow, and shares at most the whole', () => {
    const point = { ...hazelnuts!.points[1]!, afterStep: 'packign' }
    expect(problems({ points: [hazelnuts!.points[0]!, point] })[0]?.message).toContain(
      'did you mean "packing"?',
    )
    const [first, ...others] = hazelnuts!.contaminants
    const entries = [
      { step: 'delivery', share: 0.7 },
      { step: 'roasting', share: 0.5 },
    ]
    expect(problems({ contaminants: [{ ...first!, entries }, ...others] })[0]).toEqual({
      path: 'contaminants.0.entries',
      message: 'the shares add up to 1.2; together they are at most 1',
    })
  })

  it('follow their contaminant when another row is taken out, and go with their own', () => {
    const given = brief({
      finds: [0, 1, 2].map((contaminant) => ({ contaminant, packs: 100, found: contaminant })),
      answers: ['c0.p1.q7', 'c1.severity', 'c2.p0.q1', 'p1.interval'].map((question) => ({
        question,
        answer: 'yes',
        because: 'as seen',
      })),
    })
    const left = readForm(removeRow(writeForm(given), 'contaminants.1')).input as BriefInput
    expect(left.finds).toEqual([
      { contaminant: 0, packs: 100, found: 0 },
      { contaminant: 1, packs: 100, found: 2 },
    ])
    expect(left.answers?.map(({ question }) => question)).toEqual(['c0.p1.q7', 'c1.p0.q1', 'p1.interval'])
    const without = readForm(removeRow(writeForm(given), 'points.0')).input as BriefInput
    expect(without.answers?.map(({ question }) => question)).toEqual([
      'c0.p0.q7',
      'c1.severity',
      'p0.interval',
    ])
  })
})
