import { beforeAll, describe, expect, it } from 'vitest'
import { moved } from '../../../src/advice/change/lever.ts'
import { smallestShare } from '../../../src/advice/change/smallest-share.ts'
import { Allowance } from '../../../src/advice/change/work.ts'
import { nameWords } from '../../../src/advice/say/words.ts'
import { advise } from '../../../src/advise.ts'
import { demos } from '../../../src/brief/demos.ts'
import { entersBehind } from '../../../src/brief/entry.ts'
import type { Advice, Brief, Option } from '../../../src/contract/index.ts'
import { sweep } from '../../sweep.ts'
import { briefOf, demoBrief, demoInput, quickGiven } from '../demo.ts'

const searched = new Map<string, Promise<Advice>>()
/** The advice on a demo with what would change it, searched for once. */
const changesOf = (id: string): Promise<Advice> => {
  const found = searched.get(id) ?? advise(demoBrief(id), { withoutMissing: true })
  searched.set(id, found)
  return found
}

describe('a deep bed', () => {
  let advice: Advice
  const depth = () =>
    advice.changes.find(({ inputs }) => inputs.some(({ path }) => path === 'points.0.heightMm'))!
  /** Mince lies deep and has no grains: what thinner food brings is not eaten up by a blunter threshold. */
  const given = {
    product: { food: 'beef_mince' },
    points: [
      {
        name: 'belt to the former',
        stage: 'loose' as const,
        heightMm: 100,
        widthMm: 200,
        lengthMm: 250,
        speedMPerMin: 12,
        kgPerHour: 2000,
      },
    ],
    contaminants: [{ material: 'glass_any', mustFindMm: 2.2 }],
    equipment: ['xray-single'],
  }
  beforeAll(async () => {
    advice = await advise(briefOf(given), { withoutMissing: true })
  })

  it('is made shallower together with a faster belt', () => {
    const [height, speed] = depth().inputs as { path: string; from: number; to: number }[]
    expect(speed?.path).toBe('points.0.speedMPerMin')
    expect(height!.to * speed!.to).toBeGreaterThanOrEqual(height!.from * speed!.from)
  })
  it('then really meets what the change says, and a smaller change does not', async () => {
    const glassBy = async (inputs: { path: string; from: number | string; to: number | string }[]) => {
      const after = await quickGiven(moved(given, inputs))
      return after?.points[0]?.options.find((o) => o.equipment === 'xray-single')?.findings[0]?.meets
    }
    expect(depth().effect).toMatch(/single energy then meets glass/)
    expect(await glassBy(depth().inputs)).toBe('yes')
    const [height, speed] = depth().inputs as { path: string; from: number; to: number }[]
    const less = height!.to + 8
    const slower = (height!.from * speed!.from) / less
    expect(
      await glassBy([
        { ...height!, to: less },
        { ...speed!, to: slower },
      ]),
    ).not.toBe('yes')
  })
})

const promised = (meets: string | undefined) => meets === 'yes' || meets === 'partly'

describe('another inspection point', () => {
  it('is offered where the same machine meets a size it misses here', async () => {
    const advice = await changesOf('hazelnuts')
    const change = advice.changes.find(({ inputs }) => inputs[0]?.path === 'points.1')!
    expect(change.inputs).toEqual([{ path: 'points.1', from: 'after packing', to: 'sorting belt' }])
    const [there, here] = advice.points.map((p) =>
      p.options.find(({ equipment }) => equipment === change.equipment),
    )
    const gained = here!.findings.filter(
      (f, i) => !promised(f.meets) && promised(there!.findings[i]!.meets) && f.mustFindMm !== null,
    )
    expect(gained.length).toBeGreaterThan(0)
  })
  it('is not offered for what the flow says enters behind it', async () => {
    const given = demoInput('chicken')
    given.flow = [
      { step: 'single fillets after trimming' },
      { step: 'sealed trays' },
      { step: 'case packing', entersHere: given.contaminants.map(({ material }) => material) },
    ]
    const advice = await advise(briefOf(given), { withoutMissing: true })
    expect(advice.changes.filter(({ inputs }) => inputs[0]?.path === 'points.0')).toEqual([])
  })
})

describe('foil around the food', () => {
  it('is replaced where it alone keeps a coil from a metal', async () => {
    const { changes } = await changesOf('chocolate')
    const wrapping = changes.find(({ inputs }) => inputs[0]?.path === 'points.1.parts.0.material')
    expect(wrapping?.inputs[0]).toMatchObject({ from: 'aluminium_foil' })
    expect(wrapping?.effect).toMatch(/^Metal detector.* then meets/)
  })
})

describe('every change of every demo', () => {
  const named = (brief: Brief, effect: string) =>
    brief.contaminants.flatMap((_, c) => (effect.includes(nameWords(brief, c)) ? [c] : []))
  const meets = (option: Option | undefined, c: number) =>
    option?.findings.find((f) => f.contaminant === c)?.meets

  describe.each(demos.map(({ id }) => id))('%s', (id) => {
    const brief = demoBrief(id)
    let advice: Advice
    beforeAll(async () => {
      advice = await changesOf(id)
    })
    it('is verified, at most five, or it says that there is none', () => {
      const { changes, changesNote } = advice
      expect(changes.length).toBeLessThanOrEqual(5)
      expect(changes.every(({ verified }) => verified)).toBe(true)
      expect(changes.length > 0 || changesNote !== '').toBe(true)
      const known = new Set(advice.trace.rules.map(({ key }) => key))
      const traced = [...changes.flatMap(({ grounds }) => grounds), ...advice.changesGrounds]
      expect(traced.length).toBeGreaterThan(0)
      expect(traced.filter(({ trace }) => !known.has(trace))).toEqual([])
    })
    // With every run the machine it speaks of, in a sweep all machines of the brief.
    it('applied to the brief, does what it says and loses nothing', async () => {
      for (const { inputs, equipment, effect } of advice.changes) {
        if (/^points\.\d+$/.test(inputs[0]!.path)) continue
        const whole = moved(brief.given, inputs)
        const after = (await quickGiven(sweep({ ...whole, equipment: [equipment] }, whole)))!
        const at = /^points\.(\d+)\./.exec(inputs[0]!.path)?.[1]
        const held = advice.points.flatMap(({ options }, point) => {
          const now = after.points[point]!.options.find((o) => o.equipment === equipment)
          const option = options.find((o) => o.equipment === equipment)
          if (!option || !now || (at !== undefined && Number(at) !== point)) return []
          const gained = named(brief, effect).every((c) => promised(meets(now, c)))
          if (!gained || now.verdict === 'not-suitable') return []
          if (effect.includes('every size you must find'))
            expect([effect, now.findings.every((f) => f.mustFindMm === null || promised(f.meets))]).toEqual([
              effect,
              true,
            ])
          for (const f of option.findings)
            if (promised(f.meets))
              expect([effect, promised(meets(now, f.contaminant))]).toEqual([effect, true])
          return [point]
        })
        expect(named(brief, effect).length).toBeGreaterThan(0)
        expect([effect, held.length > 0]).toEqual([effect, true])
      }
    })
    it('at another inspection point, the machine alone there meets what it misses here', async () => {
      for (const { inputs, equipment, effect } of advice.changes) {
        const [, here] = /^points\.(\d+)$/.exec(inputs[0]!.path) ?? []
        if (here === undefined) continue
        const there = brief.points.findIndex(({ name }) => name === inputs[0]!.to)
        const alone = (point: number) =>
          quickGiven({
            ...brief.given,
            points: [brief.given.points[point]!],
            equipment: [equipment],
          }).then((one) => one?.points[0]?.options[0])
        const [before, after] = [await alone(Number(here)), await alone(there)]
        const gained = named(brief, effect)
        expect(gained.length).toBeGreaterThan(0)
        expect(after?.verdict).not.toBe('not-suitable')
        for (const c of gained) {
          expect([effect, promised(meets(before, c))]).toEqual([effect, false])
          expect([effect, promised(meets(after, c))]).toEqual([effect, true])
          expect(entersBehind(brief, c, there)).not.toBe(true)
        }
      }
    })
  })
  it('holds of each kind at least once', async () => {
    const all = await Promise.all(demos.map(({ id }) => changesOf(id)))
    const paths = all.flatMap(({ changes }) => changes.map(({ inputs }) => inputs[0]!.path))
    // Depth and speed together: "a deep bed" above. In grain a thinner bed no longer brings a promise: where fewer
    // grains lie on one another they look more like a piece.
    for (const kind of [/^points\.\d+$/, /material$/, /mustFindMm$/])
      expect(paths.filter((path) => kind.test(path)).length).toBeGreaterThan(0)
  })
  it('says so where nothing does it', async () => {
    const given = demoInput('mince')
    given.contaminants = [{ material: 'bone_any', mustFindMm: 3, basis: 'injury' }]
    const advice = await advise(briefOf(given), { withoutMissing: true })
    expect(advice.changes).toEqual([])
    expect(advice.changesNote).toMatch(/^No change of .* brings a missed size within reach/)
  })
})

describe('the smallest share of a lever', () => {
  const lever = {
    id: 'speed' as const,
    words: '',
    dosed: true,
    at: (share: number) => [{ path: 'x', from: 1, to: Number((1 + share).toFixed(3)) }],
  }
  /** Met from a share on, with a ratio that falls as a power of the way. */
  const world = (needed: number) => {
    let trials = 0
    const tryOut = async (moves: readonly { to: number | string }[]) => {
      trials++
      const share = Number(moves[0]!.to) - 1
      const ratio = Math.exp(needed - share)
      return { met: ratio <= 1, ratio }
    }
    return { tryOut, trials: () => trials }
  }
  it.each([0.05, 0.3, 0.62, 0.97])('%d is closed in from above with few trials', async (needed) => {
    const { tryOut, trials } = world(needed)
    const moves = await smallestShare(lever, { met: false, ratio: Math.exp(needed) }, tryOut)
    const share = Number(moves![0]!.to) - 1
    expect(share).toBeGreaterThanOrEqual(needed)
    expect(share).toBeLessThan(needed + 0.16)
    expect(trials()).toBeLessThanOrEqual(5)
  })
  it('is none where even all of it does not do', async () => {
    const { tryOut, trials } = world(1.5)
    expect(await smallestShare(lever, { met: false, ratio: 5 }, tryOut)).toBeNull()
    expect(trials()).toBe(1)
  })
  it('is what was reached when trials run out', async () => {
    let left = 2
    const { tryOut } = world(0.2)
    const few = async (moves: readonly { to: number | string }[]) => (left-- > 0 ? tryOut(moves) : null)
    const moves = await smallestShare(lever, { met: false, ratio: Math.exp(0.2) }, few)
    expect(Number(moves![0]!.to) - 1).toBeGreaterThanOrEqual(0.2)
  })
})

it('an allowance refuses what is more than is left, and says that it did', () => {
  const allowance = new Allowance(3)
  expect([allowance.take(2), allowance.take(2), allowance.take(1)]).toEqual([true, false, true])
  expect(allowance.ranOut).toBe(true)
})
