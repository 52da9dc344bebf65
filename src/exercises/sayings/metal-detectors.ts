import { mm } from '../numbers.ts'
import { withCoil, withXray } from '../practice.ts'
import { alike, expected, type Saying } from './saying.ts'

const METALS = ['steel', 'brass', 'aluminium', 'ss316'] as const
const METAL_NAMES = ['mild steel', 'brass', 'aluminium', 'stainless steel 316']

const biscuits = withCoil({
  product: { food: 'biscuit' },
  point: { heightMm: 40 },
  contaminants: METALS.map((material) => ({ material })),
})

/** A wire as thin as a hair, mm. */
const HAIR_MM = 0.1
const BALL_MM = 1.2

const wired = withCoil({
  product: { food: 'biscuit' },
  point: { heightMm: 40 },
  contaminants: [
    { material: 'ss304', mustFindMm: BALL_MM, basis: 'customer' },
    { material: 'ss304', shape: 'wire', lengthMm: 10, mustFindMm: HAIR_MM, basis: 'customer' },
    { material: 'ss304', shape: 'wire', lengthMm: BALL_MM, mustFindMm: HAIR_MM, basis: 'customer' },
  ],
})
const salt = (saltPct: number) => ({
  product: { food: 'cheddar', saltPct, temperatureC: 8 },
  point: { heightMm: 60 },
  contaminants: [{ material: 'ss316' }],
})
const saltXray = [0.5, 3].map((pct) => withXray(salt(pct)))
const saltCoil = [0.5, 3].map((pct) => withCoil(salt(pct)))

export const allMetalsAlike: Saying = {
  claim: [
    'A metal detector finds all metals at about the same size.',
    'A metal detector finds every metal equally well.',
  ],
  check: ({ say }) => {
    const sizes = METALS.map((_, at) => expected(biscuits(), at))
    const [first, last] = [sizes[0]!, sizes.at(-1)!]
    return {
      holds: alike(first, last),
      outcome: `In dry biscuits: ${METAL_NAMES.map((name, at) => `${name} ${mm(sizes[at] ?? null)}`).join(', ')}.`,
      because: say(
        'Iron answers by its magnetism, good conductors by their currents; stainless steel has neither in strength and must be larger. In wet food it falls further behind.',
        'Iron is magnetic and shouts. Stainless steel is quiet, so the piece must be bigger.',
      ),
      title: 'Smallest ball expected to be found in dry biscuits',
      unit: 'mm',
      bars: METAL_NAMES.map((words, at) => ({ words, value: sizes[at] ?? null })),
    }
  },
}

export const saltAndTheCoil: Saying = {
  claim: [
    'More salt in the cheese makes metal harder to find for a metal detector, but not for x-ray.',
    'Salty cheese troubles the metal detector, but not the x-ray machine.',
  ],
  check: ({ say }) => {
    const coil = saltCoil.map((seen) => expected(seen()))
    const xray = saltXray.map((seen) => expected(seen()))
    return {
      holds: !alike(coil[0]!, coil[1]!) && alike(xray[0]!, xray[1]!),
      outcome: `From 0.5 to 3 % salt: metal detector ${mm(coil[0]!)} to ${mm(coil[1]!)}, x-ray ${mm(xray[0]!)} to ${mm(xray[1]!)}.`,
      because: say(
        'Salt water conducts, and the coil hears the currents in it. X-rays care for density and for heavy atoms, and a few per cent of salt change little.',
        'Salt water carries current, and the detector hears that. X-rays care for weight, and the salt adds hardly any.',
      ),
      title: 'Smallest ball of stainless steel 316 expected to be found',
      unit: 'mm',
      bars: [
        { words: 'metal detector, 0.5 % salt', value: coil[0]!, none: 'not found' },
        { words: 'metal detector, 3 % salt', value: coil[1]!, none: 'not found' },
        { words: 'x-ray, 0.5 % salt', value: xray[0]!, none: 'not found' },
        { words: 'x-ray, 3 % salt', value: xray[1]!, none: 'not found' },
      ],
    }
  },
}

export const ballSizeForWires: Saying = {
  claim: [
    `A detector that finds a stainless ball of ${BALL_MM} mm also finds a hair-thin stainless wire ${BALL_MM} mm long.`,
    `It finds a steel ball of ${BALL_MM} mm, so it finds a bit of thin steel wire ${BALL_MM} mm long.`,
  ],
  check: ({ say, share }) => {
    const [ball, long, hair] = wired().assessment.findings.map(
      ({ chanceAtMustFind }) => chanceAtMustFind ?? 0,
    )
    const wire = expected(wired(), 1)
    return {
      holds: hair! >= 0.9,
      outcome: say(
        `In dry biscuits the ball of ${BALL_MM} mm is found ${share(ball!)} of the time, the wire ${BALL_MM} mm long ${share(hair!)}.`,
        `In dry biscuits: of the balls ${share(ball!)} are found, of the wires ${share(hair!)}.`,
      ),
      because: say(
        `A ball size speaks of balls. A wire needs metal in two ways, thickness and length; one so short and hair-thin holds a fraction of the metal of the ball. Even 10 mm long it must be ${mm(wire)} thick to be found in its weaker lie. Ask for wires as wires.`,
        'A short thin wire holds far less metal than a ball as wide as it is long. Test wires with wires.',
      ),
      title: say('Stainless steel 304 in dry biscuits: found', 'Steel in dry biscuits: found of 100'),
      unit: say('%', ''),
      bars: [
        { words: `ball of ${BALL_MM} mm`, value: ball! * 100 },
        { words: `wire 10 mm long, ${HAIR_MM} mm thick`, value: long! * 100 },
        { words: `wire ${BALL_MM} mm long, ${HAIR_MM} mm thick`, value: hair! * 100 },
      ],
    }
  },
}
