import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { advise } from '../../src/advise.ts'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { Brief, BriefInput } from '../../src/contract/index.ts'
import type { InputId } from '../../src/trade-offs/input.ts'
import { INPUTS, knownInput } from '../../src/trade-offs/inputs.ts'
import { sizesAt } from '../../src/trade-offs/sizes-at.ts'
import { type Series, sizeAgainst, sizedMachinesAt } from '../../src/trade-offs/trade-offs.ts'
import { sweep } from '../sweep.ts'

function read(input: BriefInput): Brief {
  const parsed = parseBrief(input)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.brief
}

const beans: BriefInput = {
  product: { food: 'beans_frozen' },
  points: [
    {
      name: 'belt',
      stage: 'loose',
      heightMm: 80,
      widthMm: 250,
      lengthMm: 300,
      speedMPerMin: 20,
      kgPerHour: 6000,
    },
    {
      name: 'bag',
      stage: 'packed',
      heightMm: 60,
      widthMm: 160,
      lengthMm: 200,
      massG: 900,
      speedMPerMin: 25,
      packsPerMin: 60,
    },
  ],
  contaminants: [
    { material: 'quartz', mustFindMm: 4 },
    { material: 'ss316', mustFindMm: 2 },
    { material: 'wood', mustFindMm: 8 },
  ],
  equipment: ['xray-single', 'xray-dual', 'coil-single', 'coil-multi'],
}
const brief = read(beans)
const all = ['xray-single', 'xray-dual', 'coil-single', 'coil-multi']

/** null counts the same on both sides. */
const same = (a: number | null, b: number | null) => {
  expect(a === null).toBe(b === null)
  if (a !== null && b !== null) expect(Math.abs(a / b - 1)).toBeLessThan(1e-3)
}

const REFUSED = ['too-wide', 'too-high', 'fan-too-wide', 'over-full']

describe('a curve at the present value', () => {
  const cases = demos
    .filter(({ id }) => ['hazelnuts', 'chicken', 'milk-powder', 'mince'].includes(id))
    .map(({ id, brief: given }) => ({ id, given }))

  it.each(cases)('$id: has the number of the advice, best, expected and cautious', async ({ given }) => {
    const one = read(given)
    const advice = await advise(one, { withoutChanges: true, withoutMissing: true })
    let checked = 0
    one.points.forEach((_, pointIndex) => {
      const machines = sizedMachinesAt(one, pointIndex)
        .filter((machine) => machine.family === 'coil' || !machine.windowsKeV)
        .map(({ id }) => id)
      const contaminant = pointIndex % one.contaminants.length
      for (const series of sizeAgainst(one, pointIndex, machines, contaminant, 'false-rejects', 2)) {
        const here = series.steps.find(({ value }) => value === series.present)
        const finding = advice.points[pointIndex]!.options.find(
          ({ equipment }) => equipment === series.machine,
        )!.findings[contaminant]!
        if (REFUSED.includes(here!.gap ?? '')) continue
        same(here!.bestMm, finding.bestMm)
        same(here!.expectedMm, finding.expectedMm)
        expect(here!.cautiousKnown).toBe(true)
        same(here!.cautiousMm, finding.cautiousMm)
        checked++
      }
    })
    expect(checked).toBeGreaterThan(0)
  })

  it('is the same whatever is moved', () => {
    const inputs: InputId[] = [
      'height',
      'depth-with-speed',
      'speed',
      'grain',
      'packing',
      'unevenness',
      'pixel',
    ]
    for (const input of inputs) {
      for (const series of sizeAgainst(brief, 0, all, 1, input, 2)) {
        if (series.steps.length === 0) continue
        const here = series.steps.find(({ value }) => value === series.present)
        same(here!.expectedMm, series.now.expectedMm)
        same(here!.cautiousMm, series.now.cautiousMm)
        same(here!.bestMm, series.now.bestMm)
      }
    }
  })

  it('on the voltage curve is the voltage the machine was given', () => {
    for (const series of sizeAgainst(brief, 0, ['xray-single', 'xray-dual'], 0, 'kV', 5)) {
      expect(series.present).toBe(series.now.kV)
      const here = series.steps.find(({ value }) => value === series.present)!
      same(here.expectedMm, series.now.expectedMm)
      expect(Math.min(...series.steps.map(({ value }) => value))).toBeGreaterThanOrEqual(40)
    }
  })

  it('on the conductivity curve agrees in what is expected; its range is then taken as known', () => {
    for (const series of sizeAgainst(brief, 1, ['coil-single'], 1, 'conductivity', 4)) {
      const here = series.steps.find(({ value }) => value === series.present)!
      same(here.expectedMm, series.now.expectedMm)
      expect(here.cautiousMm!).toBeLessThanOrEqual(series.now.cautiousMm!)
    }
  })
})

describe('depth with speed', () => {
  const input = knownInput('depth-with-speed')
  const machine = sizedMachinesAt(brief, 0)[0]!
  const now = sizesAt({ point: brief.points[0]!, machine }, brief.contaminants, 0, false)

  it('keeps the kg per hour: depth × speed, packs × mass, and the figure itself', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...brief.points),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        (point, factor) => {
          const { point: moved } = input.at({ point, machine }, point.heightMm * factor, now)
          const flow = (p: typeof point) => p.heightMm * p.speedMPerMin
          expect(flow(moved) / flow(point)).toBeCloseTo(1, 10)
          expect(moved.kgPerHour).toBe(point.kgPerHour)
          if (point.massG !== null && point.packsPerMin !== null)
            expect((moved.massG! * moved.packsPerMin!) / (point.massG * point.packsPerMin)).toBeCloseTo(1, 10)
        },
      ),
      { numRuns: 60, seed: 4 },
    )
  })

  it('shows the speed that belongs to each depth', () => {
    for (const { steps } of sizeAgainst(brief, 0, ['xray-dual'], 0, 'depth-with-speed', 6))
      for (const step of steps) expect(step.heightMm * step.speedMPerMin).toBeCloseTo(80 * 20, 6)
  })

  it('lets thin and fast beat thick and slow in grains', () => {
    const [series] = sizeAgainst(brief, 0, ['xray-single'], 0, 'depth-with-speed', 5)
    const sizes = series!.steps.map(({ bestMm }) => bestMm ?? Number.POSITIVE_INFINITY)
    expect(sizes[0]!).toBeLessThan(sizes.at(-1)!)
  })
})

describe('a place without a size', () => {
  const every = (machines: string[], contaminant: number, input: InputId, of = brief) =>
    sizeAgainst(of, 0, machines, contaminant, input, 5).flatMap(({ steps }) => steps)

  const sound = (steps: Series['steps']) => {
    for (const step of steps) {
      expect(step.expectedMm === null).toBe(step.gap !== null)
      for (const size of [step.bestMm, step.expectedMm, step.cautiousMm])
        if (size !== null) expect(size).toBeGreaterThan(0)
      if (step.bestMm !== null && step.expectedMm !== null)
        expect(step.expectedMm).toBeGreaterThanOrEqual(step.bestMm * (1 - 1e-4))
      if (step.expectedMm !== null && step.cautiousMm !== null)
        expect(step.cautiousMm).toBeGreaterThanOrEqual(step.expectedMm * (1 - 1e-9))
    }
  }

  it('carries its reason and is never zero', () => {
    const inputs = ['height', 'speed', 'unevenness', 'pixel', 'false-rejects', 'opening'] as const
    for (const [at, input] of inputs.entries())
      for (const contaminant of sweep([at % 3], [0, 1, 2])) sound(every(all, contaminant, input))
  })

  it('says what it is: a bubble, no metal, too high, larger than the model speaks of', () => {
    expect(every(['xray-single'], 2, 'speed').every(({ gap }) => gap === 'looks-like-void')).toBe(true)
    expect(every(['coil-multi'], 0, 'height').every(({ gap }) => gap === 'not-a-metal')).toBe(true)
    const high = every(['xray-single'], 0, 'height').filter(({ heightMm }) => heightMm > 150)
    expect(high.length).toBeGreaterThan(0)
    expect(high.every(({ gap, bestMm }) => gap === 'too-high' && bestMm === null)).toBe(true)
    const nuts = read(demos.find(({ id }) => id === 'hazelnuts')!.brief)
    const shell = nuts.contaminants.findIndex(({ material }) => material === 'nut_shell')
    // A shell larger than the nuts are deep still throws its shadow; in a deep bag nothing up to 25 mm does.
    const steps = sizeAgainst(nuts, 1, ['xray-single'], shell, 'height', 5)[0]!.steps
    expect(steps[0]!.gap).toBeNull()
    expect(steps.at(-1)!.gap).toBe('above-limit')
  })
})

describe('what is drawn', () => {
  it('leaves an input out where it does not enter: grain for a coil, grain in cheese', () => {
    const [xray, coil] = sizeAgainst(brief, 0, ['xray-single', 'coil-single'], 1, 'grain', 4)
    expect(xray!.steps.length).toBeGreaterThan(2)
    expect(coil!.steps).toEqual([])
    const cheese = read(demos.find(({ id }) => id === 'cheddar')!.brief)
    for (const input of ['grain', 'packing'] as const)
      for (const { steps } of sizeAgainst(cheese, 0, ['xray-single'], 0, input, 4)) expect(steps).toEqual([])
  })

  it('carries the cautious size at every other step of an x-ray curve, at its ends and in the brief', () => {
    const [xray, coil] = sizeAgainst(brief, 0, ['xray-dual', 'coil-single'], 1, 'speed', 8)
    const known = xray!.steps.map(({ cautiousKnown }) => cautiousKnown)
    expect(known[0]).toBe(true)
    expect(known.at(-1)).toBe(true)
    expect(known.filter(Boolean).length).toBeLessThan(known.length)
    known.forEach((one, at) => {
      if (at > 0) expect(one || known[at - 1]).toBe(true)
    })
    expect(xray!.steps.find(({ value }) => value === xray!.present)!.cautiousKnown).toBe(true)
    expect(coil!.steps.every(({ cautiousKnown }) => cautiousKnown)).toBe(true)
  })

  it('runs upwards, each value once', () => {
    for (const { id } of INPUTS)
      for (const { steps } of sizeAgainst(brief, 0, ['xray-single', 'coil-single'], 1, id, 3)) {
        const values = steps.map(({ value }) => value)
        expect(values).toEqual([...new Set(values)].sort((a, b) => a - b))
      }
  })

  it('does not touch the brief', () => {
    const before = JSON.stringify(brief)
    sizeAgainst(brief, 0, all, 0, 'depth-with-speed', 3)
    expect(JSON.stringify(brief)).toBe(before)
  })

  it('names a point or a contaminant that is not there', () => {
    expect(() => sizeAgainst(brief, 5, all, 0, 'height', 3)).toThrow('no inspection point 5; the brief has 2')
    expect(() => sizeAgainst(brief, 0, all, 9, 'height', 3)).toThrow('no contaminant 9; the brief has 3')
    expect(sizeAgainst(brief, 0, ['nothing'], 0, 'height', 3)).toEqual([])
  })
})
