import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import { assessCoil } from '../../src/coil/assess-coil.ts'
import type {
  CoilMachine,
  ContaminantInput,
  PointInput,
  ProductInput,
  XrayMachine,
} from '../../src/contract/index.ts'
import type { Picture, Question } from '../../src/exercises/exercise.ts'
import { howMuchLarger, howMuchSmaller } from '../../src/exercises/how-much-smaller.ts'
import { EXERCISES } from '../../src/exercises/list.ts'
import { machineOf } from '../../src/exercises/practice.ts'
import { packsToHold } from '../../src/exercises/proof/hold-quantity.ts'
import { cleanDensity, hills, pieceDensity, thresholdFor } from '../../src/exercises/proof/threshold-hills.ts'
import { VOICES } from '../../src/exercises/voice.ts'
import { assessXray } from '../../src/xray/assess.ts'

const questionsOf = (id: string): readonly Question[] =>
  EXERCISES.find((exercise) => exercise.id === id)!.questions(VOICES.full)

const rightOf = ({ answer }: Question) => (answer.kind === 'choice' ? answer.right : answer.value)
const rights = (id: string) => questionsOf(id).map(rightOf)

function bar(question: Question, words: string): number | null {
  const bars = question.pictures.flatMap((one: Picture) => (one.kind === 'bars' ? one.bars : []))
  return bars.find((one) => one.words === words)!.value
}

/** The sizes a brief of one point gives, straight from the physics. */
function sizes(id: string, product: ProductInput, point: PointInput, contaminants: ContaminantInput[]) {
  const parsed = parseBrief({
    product,
    points: [{ widthMm: 150, lengthMm: 200, speedMPerMin: 30, falseRejectsPerPack: 0.001, ...point }],
    contaminants,
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  const machine = machineOf(id)
  const input = { point: parsed.brief.points[0]!, contaminants: parsed.brief.contaminants }
  const assessment =
    machine.family === 'xray'
      ? assessXray({ ...input, machine: machine as XrayMachine, prefix: 'test' })
      : assessCoil({ ...input, machine: machine as CoilMachine, mostAtOnce: 1 })
  return assessment.findings.map(({ expectedMm }) => expectedMm)
}

describe('an example of each exercise, worked out a second way', () => {
  it('thin-and-fast: half the depth at twice the speed finds the smaller stone', () => {
    const [question] = questionsOf('thin-and-fast')
    const bed = (heightMm: number, speedMPerMin: number) =>
      sizes(
        'xray-single',
        { food: 'beans_frozen', temperatureC: -18 },
        { stage: 'loose', heightMm, widthMm: 390, lengthMm: 390, speedMPerMin },
        [{ material: 'quartz' }],
      )[0]!
    expect(bar(question!, '80 mm at 10 m/min')).toBeCloseTo(bed(80, 10), 6)
    expect(bed(40, 20)).toBeLessThan(bed(80, 10) * 0.9)
    expect(rightOf(question!)).toBe('a-third')
  })

  it('dual energy: nothing in even food, half in deep grains', () => {
    const even = ['xray-single', 'xray-dual'].map(
      (id) => sizes(id, { food: 'cheddar' }, { heightMm: 30 }, [{ material: 'quartz' }])[0]!,
    )
    const deep = ['xray-single', 'xray-dual'].map(
      (id) => sizes(id, { food: 'hazelnut' }, { heightMm: 60, stage: 'loose' }, [{ material: 'quartz' }])[0]!,
    )
    expect(even[1]! / even[0]!).toBeGreaterThan(0.8)
    expect(deep[1]! / deep[0]!).toBeLessThan(0.6)
    expect(rights('dual-even-food')).toEqual(['same'])
    expect(rights('dual-deep-grains')).toEqual(['half'])
  })

  it('light-plastics: PVC first, and polyethylene never', () => {
    const [question] = questionsOf('light-plastics')
    expect(rightOf(question!)).toBe('pvc')
    expect(bar(question!, 'polyethylene (PE)')).toBeNull()
    const plastics = ['pvc', 'ptfe', 'pom', 'pet', 'pe', 'wood'].map((material) => ({ material }))
    expect(bar(question!, 'rigid PVC')).toBeCloseTo(
      sizes('xray-single', { food: 'cheddar' }, { heightMm: 30 }, plastics)[0]!,
      6,
    )
  })

  it('card-or-inside: the card promises most too much for a plastic as heavy as meat', () => {
    const [question] = questionsOf('card-or-inside')
    expect(rightOf(question!)).toBe('pom')
    expect(bar(question!, 'chicken bone, on the card')!).toBeLessThan(bar(question!, 'chicken bone, inside')!)
  })

  it('fine-pixels: the wire gains most', () => {
    expect(rights('fine-pixels')).toEqual(['wire'])
  })

  it('jar-heel: nothing is found on the base', () => {
    const [question] = questionsOf('jar-heel')
    expect(rightOf(question!)).toBe('base')
    expect(bar(question!, 'base: glass comes to rest here')).toBeNull()
    expect(bar(question!, 'heel: glass comes to rest here')!).toBeGreaterThan(bar(question!, 'body')!)
  })

  it('flake-lying-flat: flat is the weak lie, and the curves rise with thickness', () => {
    const [question] = questionsOf('flake-lying-flat')
    expect(rightOf(question!)).toBe('flat')
    const [picture] = question!.pictures
    if (picture?.kind !== 'curves') throw new Error('curves were expected')
    const [flat, any] = picture.curves
    flat!.points.forEach(([, value], at) => {
      expect(value).toBeGreaterThanOrEqual(flat!.points[at - 1]?.[1] ?? 0)
    })
    expect(any!.points[8]![1]).toBeGreaterThan(flat!.points[8]![1])
  })

  it('foil-and-film: foil shuts the metal detector out, x-ray sees through both', () => {
    const [foil] = questionsOf('foil-and-film')
    expect(rights('foil-and-film')).toEqual(['xray', 'huge'])
    expect(bar(foil!, 'metal detector, aluminium foil, 9 µm')).toBeNull()
    expect(bar(foil!, 'metal detector, plain film')!).toBeLessThan(2.5)
  })

  it('turning-a-wire: stainless hides along the travel, iron across it', () => {
    const [stainless, iron] = questionsOf('turning-a-wire')
    expect([rightOf(stainless!), rightOf(iron!)]).toEqual(['along', 'across'])
    const ends = (question: Question) => {
      const [picture] = question.pictures
      if (picture?.kind !== 'curves') throw new Error('a curve was expected')
      const { points } = picture.curves[0]!
      return [points[0]![1], points.at(-1)![1]]
    }
    expect(ends(stainless!)[0]!).toBeLessThan(ends(stainless!)[1]!)
    expect(ends(iron!)[0]!).toBeGreaterThan(ends(iron!)[1]!)
  })

  it('opening-size: each lower opening finds a smaller ball', () => {
    const [question] = questionsOf('opening-size')
    const heights = [350, 250, 175, 125, 100]
    const balls = heights.map((height) => bar(question!, `opening ${height} mm high`)!)
    balls.slice(1).forEach((ball, at) => {
      expect(ball).toBeLessThan(balls[at]!)
    })
    expect(balls[3]).toBeCloseTo(
      sizes(
        'coil-single',
        { food: 'biscuit' },
        { heightMm: 40, apertureHeightMm: 125, apertureWidthMm: 350 },
        [{ material: 'steel' }],
      )[0]!,
      6,
    )
  })

  it('frozen-and-thawed: thawed meat asks a ball more than twice as large', () => {
    const [question] = questionsOf('frozen-and-thawed')
    expect(rightOf(question!)).toBe('much-larger')
    expect(bar(question!, '4 °C')! / bar(question!, '−18 °C')!).toBeGreaterThan(2)
  })

  it('empty-or-product: stainless steel loses most in salted cheese', () => {
    expect(rights('empty-or-product')).toEqual(['ss316'])
  })

  it('routine-check: ten of ten shows 74 %, nine checks at 0.9 leave 39 days in 100', () => {
    const [ten, nine] = questionsOf('routine-check')
    const shown = ({ answer }: Question) =>
      answer.kind === 'choice' ? answer.choices.find(({ id }) => id === answer.right)?.words : ''
    expect(shown(ten!)).toBe(`${Math.round(100 * 0.05 ** (1 / 10))} %`)
    expect(shown(nine!)).toBe(`${Math.round(100 * 0.9 ** 9)} %`)
  })

  it('hold-and-interval: everything since the last good check and until the line stood', () => {
    expect(packsToHold({ packsPerMin: 80, checkIntervalMin: 60, reactMin: 10 })).toBe(5600)
    expect(rights('hold-and-interval')).toEqual([5600, 'm30'])
  })

  it('false-rejects-a-day: 80 a minute, all day, 1 in 1,000', () => {
    expect(rights('false-rejects-a-day')).toEqual([115.2])
  })

  it('false-alarms: a bin nearly full of good packs, an alarm that repeats, warm ham, two bags', () => {
    expect(rights('false-alarms')).toEqual(['c3', 'pack', 'warm', 'overlap'])
    const [inBin] = questionsOf('false-alarms')
    expect(bar(inBin!, 'packs with a piece')).toBeCloseTo(60_000 * 20e-6 * 0.9, 9)
  })

  it('failed-check: stop, hold all, trust nothing, prove, open, write down', () => {
    expect(rights('failed-check')).toEqual(['stop', 'all', 'bad', 'proof', 'open', 'whole'])
  })

  it('reject-timing: travel over speed, and the pack that stands there', () => {
    expect(rights('reject-timing')).toEqual([
      1.2 / (30 / 60),
      'next',
      'first',
      60 / (80 * 60 * 0.001),
      'confirm',
    ])
    const [, next] = questionsOf('reject-timing')
    // 40 m/min for 2.4 s is 1.6 m, 0.4 m past the pusher; packs follow every 0.375 m.
    expect(bar(next!, 'the one that follows')).toBeCloseTo(400 - 375, 9)
  })

  it('false-reject-dial and overlap: sizes of a brief at the other setting', () => {
    const stones = [{ material: 'quartz' }]
    const [dial] = questionsOf('false-reject-dial')
    expect(bar(dial!, '1 in 10,000, 5.8 bags a day')).toBeCloseTo(
      sizes('xray-single', { food: 'hazelnut' }, { heightMm: 45, falseRejectsPerPack: 1e-4 }, stones)[0]!,
      6,
    )
    const [two] = questionsOf('overlap')
    expect(bar(two!, 'two, one on the other')).toBeCloseTo(
      sizes('xray-single', { food: 'rice' }, { heightMm: 60 }, stones)[0]!,
      6,
    )
    expect([rightOf(dial!), rightOf(two!)]).toEqual(['larger', 'larger'])
  })

  it('product-effect: a poor conductor that is not magnetic answers like the wet food', () => {
    const [question] = questionsOf('product-effect')
    expect(rightOf(question!)).toBe('ss316')
    const [plane] = question!.pictures
    if (plane?.kind !== 'plane') throw new Error('a plane was expected')
    const [cheese, steel, brass, stainless] = plane.answers
    // Signs any textbook has: wet food and stainless steel lose, iron gathers the field, brass pushes it out.
    expect(Math.abs(cheese!.reactive)).toBeLessThan(0.1 * cheese!.resistive)
    expect(steel!.reactive).toBeGreaterThan(0)
    expect(brass!.reactive).toBeLessThan(0)
    expect(Math.abs(stainless!.reactive)).toBeLessThan(0.5 * stainless!.resistive)
  })

  it('centre-or-edge, piece-and-place: the centre is weakest, stainless steel hardest', () => {
    expect(rights('centre-or-edge')).toEqual(['centre'])
    expect(rights('piece-and-place')).toEqual(['ss316-centre', 'n1'])
  })

  it('before-detection: what x-ray never sees, air takes out', () => {
    expect(rights('before-detection')).toEqual(['air'])
    const [question] = questionsOf('before-detection')
    expect(bar(question!, 'X-ray, dual energy, dearer')).toBeLessThan(1)
  })

  it('bone-by-age: two of four, and each older one better', () => {
    const [question] = questionsOf('bone-by-age')
    expect(rightOf(question!)).toBe('n2')
    const [radiograph, picture] = question!.pictures
    if (picture?.kind !== 'bars') throw new Error('bars were expected')
    const chances = picture.bars.map(({ value }) => value!)
    expect(chances).toEqual([...chances].sort((a, b) => a - b))
    if (radiograph?.kind !== 'radiograph') throw new Error('a radiograph was expected')
    // What is read in the picture is taken of the picture alone: of the largest of each kind no cartilage, all the rest.
    const { sheet } = radiograph.taken()
    expect(sheet.lines).toHaveLength(radiograph.lines.length)
    expect(sheet.lines.map(({ to }) => sheet.pieces[to - 1]!.found)).toEqual([false, true, true, true])
  })

  it('voltage-too-high: past the best voltage the size only grows', () => {
    const [question] = questionsOf('voltage-too-high')
    expect(rightOf(question!)).toBe('much-larger')
    const [picture] = question!.pictures
    if (picture?.kind !== 'curves') throw new Error('a curve was expected')
    const sized = picture.curves[0]!.points.filter(([kV]) => kV >= 50).map(([, mm]) => mm)
    expect(sized).toEqual([...sized].sort((a, b) => a - b))
  })

  it('tilted-view: the base, which the level beam cannot see', () => {
    const [question] = questionsOf('tilted-view')
    expect(rightOf(question!)).toBe('base')
    expect(bar(question!, 'base, one view')).toBeNull()
    expect(bar(question!, 'base, two views')!).toBeGreaterThan(bar(question!, 'body, two views')!)
  })

  it('misconceptions: some sayings are right', () => {
    const answers = rights('misconceptions')
    expect(answers).toContain('right')
    expect(answers.filter((answer) => answer === 'wrong').length).toBeGreaterThan(3)
  })
})

describe('the threshold game', () => {
  it('moves the cheapest cut to more false rejects when a miss costs more', () => {
    const [cheap, dear] = rights('threshold-game').map((id) => Number(String(id).slice(1)))
    expect(dear!).toBeLessThan(cheap!)
  })

  it('draws two hills of one area each, and cuts the clean one as the false-reject rate says', () => {
    const { positions, standsOut } = hills()
    const sum = (density: (x: number) => number, from: number, to: number) => {
      const step = 0.002
      let area = 0
      for (let x = from + step / 2; x < to; x += step) area += density(x) * step
      return area
    }
    const clean = (x: number) => cleanDensity(x, positions)
    expect(sum(clean, 0, 12)).toBeCloseTo(1, 3)
    expect(sum((x) => pieceDensity(x, standsOut), standsOut - 8, standsOut + 8)).toBeCloseTo(1, 3)
    for (const rate of [0.01, 0.001]) {
      const { threshold, missed } = thresholdFor(rate, hills())
      expect(sum(clean, threshold, 12) / rate).toBeCloseTo(1, 1)
      expect(sum((x) => pieceDensity(x, standsOut), -4, threshold)).toBeCloseTo(missed, 3)
    }
  })
})

describe('how much smaller', () => {
  it.each([
    [2, 2, 'same'],
    [2, 2.5, 'larger'],
    [2, 1.8, 'a-little'],
    [3, 2, 'a-third'],
    [1, 0.6, 'half'],
    [1, 0.61, 'a-third'],
    [1, 0.58, 'half'],
    [2, 1, 'half'],
    [null, 1, 'half'],
    [2, null, 'larger'],
  ])('%s mm to %s mm is %s', (before, after, right) => {
    expect(howMuchSmaller(before, after)).toMatchObject({ right })
  })
})

describe('how much larger', () => {
  it.each([
    [2, 1.8, 'smaller'],
    [2, 2.05, 'same'],
    [2, 2.9, 'larger'],
    [2, 3, 'much-larger'],
    [2, 6, 'huge'],
    [2, null, 'huge'],
  ])('%s mm to %s mm is %s', (before, after, right) => {
    expect(howMuchLarger(before, after)).toMatchObject({ right })
  })
})
