import { describe, expect, test } from 'vitest'
import { parseBrief } from '../../../src/brief/index.ts'
import { type BriefInput, machineSchema, type XrayMachine } from '../../../src/contract/index.ts'
import { archetypes, figuresOf } from '../../../src/reference/index.ts'
import { buildOf } from '../../../src/xray/beam/exposure.ts'
import { PRACTICE } from '../../../src/xray/observer/practice.ts'
import { LARGEST_MM, setScene } from '../../../src/xray/observer/scene.ts'
import { sizeIn } from '../../../src/xray/picture.ts'
import { packInBeam } from '../../../src/xray/places/pack-in-beam.ts'
import { overVoltages } from '../../../src/xray/sizes-over-voltages.ts'
import { sweep } from '../../sweep.ts'
import { jumpsIn } from './smooth.ts'

const STEPS = sweep(200, 2000)

interface Swept {
  readonly heightMm?: number
  readonly pixelMm?: number
  readonly packing?: number
  readonly speedMPerMin?: number
  readonly grainMm?: number
}

/** What is swept, from and to; grain and packing in foods of grains only. */
const IN_ANY_FOOD = { heightMm: [12, 90], pixelMm: [0.3, 1.6], speedMPerMin: [8, 80] } as const
const IN_GRAIN = { ...IN_ANY_FOOD, heightMm: [20, 90], packing: [0.35, 0.64], grainMm: [4, 20] } as const

const PIECES: BriefInput['contaminants'] = [
  { material: 'quartz', mustFindMm: 3 },
  { material: 'ss316', mustFindMm: 1 },
  { material: 'ss316', shape: 'wire', lengthMm: 10, mustFindMm: 0.6 },
]

function pointOf(food: string, { heightMm = 45, packing, speedMPerMin = 30, grainMm }: Swept) {
  const parsed = parseBrief({
    product: {
      food,
      ...(packing === undefined ? {} : { packing }),
      ...(grainMm === undefined ? {} : { grainMm }),
    },
    points: [{ heightMm, widthMm: 160, lengthMm: 220, speedMPerMin }],
    contaminants: PIECES,
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return { point: parsed.brief.points[0]!, contaminants: parsed.brief.contaminants }
}

const machineOf = (id: string, pixelMm?: number) => {
  const machine = machineSchema.parse(figuresOf(archetypes.get(id)!)) as XrayMachine
  const { maxLinesPerSecond: _most, ...rest } = machine
  return pixelMm === undefined ? rest : { ...rest, pixelMm }
}

/** Sizes of the pieces with the setting and the build fixed, mm. */
function sizesAt(id: string, food: string, swept: Swept, pieces: readonly number[]): (number | null)[] {
  const { point, contaminants } = pointOf(food, swept)
  const build = buildOf(machineOf(id, swept.pixelMm))
  const scene = setScene(build, point, packInBeam(point, build), { kV: 70, mA: 6 }, PRACTICE)
  return pieces.map((k) => sizeIn(scene, contaminants[k]!, point))
}

const CASES = [
  { id: 'xray-single', food: 'almond', ranges: IN_GRAIN, pieces: [0] },
  ...(STEPS < 2000
    ? []
    : [
        { id: 'xray-dual', food: 'hazelnut', ranges: IN_GRAIN, pieces: [0, 1, 2] },
        { id: 'xray-single', food: 'rice', ranges: IN_GRAIN, pieces: [0, 1, 2] },
      ]),
  { id: 'xray-dual-fine', food: 'chicken_breast', ranges: IN_ANY_FOOD, pieces: [0, 1, 2] },
]

describe.each(CASES)('$id before $food, setting and build fixed', ({ id, food, ranges, pieces }) => {
  test.each(Object.entries(ranges))(`${STEPS} steps of %s make no size jump`, (key, range) => {
    const rows = new Map<number, (number | null)[]>()
    const at = (value: number) => {
      const row = rows.get(value) ?? sizesAt(id, food, { [key]: value }, pieces)
      rows.set(value, row)
      return row
    }
    pieces.forEach((_, k) => {
      expect(jumpsIn(range, STEPS, LARGEST_MM, (value) => at(value)[k]!)).toEqual([])
    })
  })
})

test('a switch of setting over depth is told apart: it moves no size by more than the norm allows', () => {
  const steps = sweep(8, 60)
  let before: { kV: number; norm: number } | null = null
  for (let k = 0; k < steps; k++) {
    const { point, contaminants } = pointOf('almond', { heightMm: 30 * 1.02 ** k })
    const machine = machineOf('xray-single')
    const build = buildOf(machine)
    const { chosen, choice } = overVoltages(machine, build, point, packInBeam(point, build), contaminants)
    const norm = choice.norms[choice.index]!
    if (before && before.kV !== chosen.setting.kV) expect(norm / before.norm).toBeLessThan(1.08)
    before = { kV: chosen.setting.kV, norm }
  }
})
