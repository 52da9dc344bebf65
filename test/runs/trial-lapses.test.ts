import { describe, expect, it } from 'vitest'
import { signalReadIn } from '../../src/advice/assess/product-signal.ts'
import { advise } from '../../src/advise.ts'
import { parseBrief, ranOnWords } from '../../src/brief/index.ts'
import type { BriefInput, Finding } from '../../src/contract/index.ts'
import { beforeTrials } from '../../src/runs/index.ts'

/** Ham through a metal detector: a food with a signal of its own. */
const ham: BriefInput = {
  product: { food: 'ham' },
  points: [
    {
      name: 'after packing',
      heightMm: 50,
      widthMm: 100,
      lengthMm: 150,
      massG: 500,
      speedMPerMin: 20,
      packsPerMin: 60,
      falseRejectsPerPack: 0.001,
    },
  ],
  contaminants: [
    { material: 'steel', mustFindMm: 2 },
    { material: 'ss316', mustFindMm: 3 },
  ],
  equipment: ['coil-single'],
}
const parsed = (given: BriefInput) => {
  const read = parseBrief(given)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.brief
}
const at = { point: 'after packing', equipment: 'coil-single', contaminant: 0, date: '2026-11-27' } as const
const ranOn = ranOnWords(parsed(ham), 0, 'coil-single', 0)
const tried = (more: { productSignalMm?: number; ranOn?: string }): BriefInput => ({
  ...ham,
  measured: [
    {
      ...at,
      cleanRun: { packs: 3000, rejects: 1 },
      productSignal: 40,
      constants: { sizeFactor: 1, sizeSpread: 0.1, steepness: 1 },
      ...more,
    },
  ],
  demonstrated: [{ ...at, sizeMm: 2, basis: 'exact', packs: 46, ranOn }],
})
const quick = { withoutChanges: true, withoutMissing: true, withoutRecords: true }
const optionOf = async (given: BriefInput) => (await advise(parsed(given), quick)).points[0]!.options[0]!

describe('a trial lapses', () => {
  it('when anything it ran on changes, and says what', () => {
    const given = tried({ ranOn })
    expect(parsed(given)).toMatchObject({ lapsed: [], demonstrated: [{ sizeMm: 2 }] })
    const changes: readonly [Partial<BriefInput>, string][] = [
      [{ product: { food: 'almond' } }, 'food: ham then, almond now'],
      [{ product: { food: 'ham', temperatureC: 11 } }, 'temperature, °C'],
      [{ points: [{ ...given.points[0]!, heightMm: 60 }] }, 'height, mm: 50 then, 60 now'],
      [{ points: [{ ...given.points[0]!, speedMPerMin: 30 }] }, 'speed, m/min: 20 then, 30 now'],
      [{ points: [{ ...given.points[0]!, falseRejectsPerPack: 0.0001 }] }, 'false rejects per pack'],
      [{ contaminants: [{ material: 'brass', mustFindMm: 2 }, ham.contaminants[1]!] }, 'piece: steel'],
    ]
    for (const [change, said] of changes) {
      const brief = parsed({ ...given, ...change })
      expect([brief.measured, brief.demonstrated], said).toEqual([[], []])
      expect(brief.lapsed[0]!.changed.join('; ')).toContain(said)
    }
    // Severity, title, and the size asked are nothing that a trial runs on.
    const asked = [{ material: 'steel', mustFindMm: 1.5, severity: 5 }, ham.contaminants[1]!]
    expect(parsed({ ...given, title: 'Other', contaminants: asked }).lapsed).toEqual([])
  })

  it('its sizes are the computed ones again, and the advice asks for the trial anew', async () => {
    const points = [{ ...ham.points[0]!, heightMm: 60 }]
    const lapsed = await optionOf({ ...tried({ ranOn }), points })
    const plain = await optionOf({ ...ham, points })
    expect(lapsed.findings).toEqual(plain.findings)
    expect(lapsed.reasons.find(({ rule }) => rule === 'trial-no-longer-counts')?.text).toContain(
      'height, mm: 50 then, 60 now',
    )
    expect(plain.reasons.some(({ rule }) => rule === 'trial-no-longer-counts')).toBe(false)
  })

  it('a prediction is made without the records of the trial it is held against', () => {
    expect(beforeTrials(parsed(tried({ ranOn }))).given).toMatchObject({ measured: [], demonstrated: [] })
    const bare = parsed(ham)
    expect(beforeTrials(bare)).toBe(bare)
  })
})

describe('the signal of clean packs', () => {
  const sizesOf = (findings: readonly Finding[]) => findings.map(({ expectedMm }) => expectedMm)

  it('moves what a metal detector leaves of the food, for the other pieces of the machine', async () => {
    const [loud, quiet, none] = [
      await optionOf(tried({ productSignalMm: 1.8 })),
      await optionOf(tried({ productSignalMm: 0.6 })),
      await optionOf(tried({})),
    ]
    const [large, small, computed] = [loud, quiet, none].map(({ findings }) => sizesOf(findings))
    expect(large![1]!).toBeGreaterThan(computed![1]! * 1.05)
    expect(small![1]!).toBeLessThan(computed![1]! * 0.95)
    // The piece of the trial has constants of its own, fitted to the prediction as it was.
    expect([large![0], small![0]]).toEqual([computed![0], computed![0]])
  })

  it('is left alone where the point gives a residual read on the line', () => {
    const read = { amplitudePct: 2, phaseDeg: 1 }
    const given = tried({ productSignalMm: 1.8 })
    const where = { pointIndex: 0, equipment: 'coil-single' }
    expect(signalReadIn(parsed(given), where)).toEqual({ contaminant: 0, sizeMm: 1.8, packs: 3000 })
    const points = [{ ...ham.points[0]!, productSignal: read }]
    expect(signalReadIn(parsed({ ...given, points }), where)).toBeNull()
  })
})
