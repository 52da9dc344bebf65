import { lowerBound, upperBound } from '../numerics/binomial.ts'
import type { Exercise, Question } from './exercise.ts'
import { count, mm } from './numbers.ts'
import { withCoil, withXray } from './practice.ts'
import type { Voice } from './voice.ts'

const METALS = ['steel', 'brass', 'aluminium', 'ss316'] as const
const METAL_NAMES = ['mild steel', 'brass', 'aluminium', 'stainless steel 316']

const biscuits = withCoil({
  product: { food: 'biscuit' },
  point: { heightMm: 40 },
  contaminants: METALS.map((material) => ({ material })),
})
/** A wire as thin as a hair, mm. */
const HAIR_MM = 0.1

const wired = withCoil({
  product: { food: 'biscuit' },
  point: { heightMm: 40 },
  contaminants: [
    { material: 'ss304' },
    { material: 'ss304', shape: 'wire', lengthMm: 10 },
    { material: 'ss304', shape: 'wire', lengthMm: 1, mustFindMm: HAIR_MM, basis: 'customer' },
  ],
})
const nutsAt = (speedMPerMin: number) =>
  withXray({
    product: { food: 'hazelnut' },
    point: { heightMm: 45, speedMPerMin },
    contaminants: [{ material: 'quartz' }],
  })
const usual = nutsAt(40)
const slow = nutsAt(20)
const foiled = withXray({
  product: { food: 'chocolate' },
  point: { heightMm: 10, parts: [{ material: 'aluminium_foil', mm: 0.009, place: 'wrap' }] },
  contaminants: [{ material: 'quartz' }],
})
const bare = withXray({
  product: { food: 'chocolate' },
  point: { heightMm: 10 },
  contaminants: [{ material: 'quartz' }],
})
const bones = withXray({
  product: { food: 'chicken_breast' },
  point: { heightMm: 25 },
  contaminants: [{ material: 'bone_poultry_soft' }, { material: 'bone_hard' }],
})
const salt = (saltPct: number) => ({
  product: { food: 'cheddar', saltPct, temperatureC: 8 },
  point: { heightMm: 60 },
  contaminants: [{ material: 'ss316' }],
})
const saltXray = [0.5, 3].map((pct) => withXray(salt(pct)))
const saltCoil = [0.5, 3].map((pct) => withCoil(salt(pct)))

const expected = (seen: { readonly expectedMm: readonly (number | null)[] }, at = 0) =>
  seen.expectedMm[at] ?? null

interface Statement {
  readonly claim: readonly [full: string, plain: string]
  /** Worked out: whether the claim holds, what came out, and why. */
  readonly check: (voice: Voice) => {
    readonly holds: boolean
    readonly outcome: string
    readonly because: string
    readonly bars: readonly {
      readonly words: string
      readonly value: number | null
      readonly none?: string
    }[]
    readonly unit: string
    readonly title: string
  }
}

/** Bars are at most this share apart to count as the same. */
const SAME = 1.15
const alike = (a: number | null, b: number | null) =>
  a !== null && b !== null && Math.max(a, b) / Math.min(a, b) < SAME

const STATEMENTS: readonly Statement[] = [
  {
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
  },
  {
    claim: [
      'Half the belt speed finds stones of half the size.',
      'Run the belt half as fast, and it finds stones half as big.',
    ],
    check: ({ say, share }) => {
      const [fast, half] = [usual(), slow()]
      const [a, b] = [expected(fast), expected(half)]
      return {
        holds: (b ?? 99) < 0.6 * (a ?? 99),
        outcome: `At 40 m/min ${mm(a)}, at 20 m/min ${mm(b)}.`,
        because: say(
          `Half the speed gives each line twice the x-rays, and noise from x-rays falls with the root of two. But ${share(fast.assessment.findings[0]!.noise.grain)} of what hides the stone is the pattern of the nuts, and that stays.`,
          'A slower belt gives more light. But the pattern of the nuts is what hides the stone, and the pattern stays.',
        ),
        title: 'Smallest stone expected to be found',
        unit: 'mm',
        bars: [
          { words: '40 m/min', value: a },
          { words: '20 m/min', value: b },
        ],
      }
    },
  },
  {
    claim: [
      'X-ray looks through the foil of a chocolate bar as if it were not there.',
      'X-rays go through the foil of a chocolate bar as if it were not there.',
    ],
    check: ({ say, share }) => {
      const [a, b] = [expected(bare()), expected(foiled())]
      return {
        holds: alike(a, b),
        outcome: `Without foil ${mm(a)}, with it ${mm(b)}.`,
        because: say(
          `Two layers of 9 µm aluminium let ${share(foiled().assessment.packagingTransmission)} of the x-rays through. It is the metal detector that the foil closes.`,
          'The foil is far too thin to stop x-rays. It is the metal detector that cannot look through it.',
        ),
        title: 'Smallest stone expected to be found in a chocolate bar',
        unit: 'mm',
        bars: [
          { words: 'bare', value: a },
          { words: 'in foil', value: b },
        ],
      }
    },
  },
  {
    claim: [
      'Three test pieces found of three: the machine finds at least nine in ten.',
      'Three pieces run, three found: so the machine finds nearly all.',
    ],
    check: ({ say, share }) => {
      const bound = lowerBound(3, 3, 0.95)
      return {
        holds: bound >= 0.9,
        outcome: say(
          `Three of three shows at least ${share(bound)}, 95 % sure.`,
          `Only ${share(bound)} is sure.`,
        ),
        because: say(
          'A machine that misses half of them finds three of three in one try in eight. It takes 29 of 29 to show nine in ten.',
          'A machine that misses every second piece can find three in a row by luck. To be sure of nine in ten it takes 29 pieces, all found.',
        ),
        title: say('Shown at the least, 95 % sure', 'Surely found, of 100'),
        unit: say('%', ''),
        bars: [3, 10, 29, 59].map((runs) => ({
          words: `${runs} of ${runs} found`,
          value: lowerBound(runs, runs, 0.95) * 100,
        })),
      }
    },
  },
  {
    claim: [
      'The machine rejected nothing in 10,000 packs, so there is nothing in our packs.',
      'Nothing was thrown out of 10,000 packs, so nothing is in them.',
    ],
    check: ({ say }) => {
      const packs = 10_000
      const most = upperBound(0, packs, 0.95) * 1e6
      return {
        holds: most < 1,
        outcome: say(
          `None in ${count(packs)} still allows ${count(most)} in a million, 95 % sure, even of what the machine finds.`,
          `There may still be ${count(most)} in a million packs.`,
        ),
        because: say(
          'None in n packs leaves about 3/n. And it speaks only of pieces the machine can find: glass in the heel of a jar, or light plastic, was never looked at.',
          'The machine can only report what it can see. Light plastic, for one, it never sees. And 10,000 packs are few.',
        ),
        title: say(
          'Pieces per million packs still possible, 95 % sure',
          'Pieces in a million packs still possible',
        ),
        unit: '',
        bars: [1000, 10_000, 100_000, 1_000_000].map((n) => ({
          words: `none in ${count(n)} packs`,
          value: upperBound(0, n, 0.95) * 1e6,
        })),
      }
    },
  },
  {
    claim: [
      'Bone of an old hen shows better to x-rays than bone of a young chicken.',
      'Hard old bone shows better than soft young bone.',
    ],
    check: ({ say }) => {
      const [soft, hard] = [expected(bones(), 0), expected(bones(), 1)]
      return {
        holds: hard !== null && (soft === null || hard < soft / SAME),
        outcome: `Soft young bone ${mm(soft)}, hard bone ${mm(hard)}.`,
        because: say(
          'It is the calcium that shows. Young bone has little of it and much water; cartilage has none and is not found at all.',
          'What shows is the chalk in the bone. Young bone has little of it.',
        ),
        title: 'Smallest piece of bone expected to be found in a fillet',
        unit: 'mm',
        bars: [
          { words: 'soft young bone', value: soft, none: 'not found' },
          { words: 'hard bone', value: hard, none: 'not found' },
        ],
      }
    },
  },
  {
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
  },
  {
    claim: [
      'A detector that finds a stainless ball of 1 mm finds a hair-thin stainless wire 1 mm long.',
      'It finds a steel ball of 1 mm, so it finds a bit of thin steel wire 1 mm long.',
    ],
    check: ({ say, share }) => {
      const [ball, wire] = [expected(wired(), 0), expected(wired(), 1)]
      const hair = wired().assessment.findings[2]!.chanceAtMustFind ?? 0
      return {
        holds: hair >= 0.9,
        outcome: `Ball: ${mm(ball)} across. Wire 10 mm long: ${mm(wire)} thick, in its weaker lie. Wire 1 mm long and ${HAIR_MM} mm thick: found ${share(hair)}.`,
        because: say(
          'A ball size speaks of balls. A wire needs metal in two ways, thickness and length; one that is a millimetre long and hair-thin holds a fraction of the metal of the ball. Ask for wires as wires.',
          'A wire 1 mm long holds far less metal than a ball of 1 mm. Test wires with wires.',
        ),
        title: 'Stainless steel 304 in dry biscuits: smallest thickness expected to be found',
        unit: 'mm',
        bars: [
          { words: 'ball', value: ball },
          { words: 'wire 10 mm long', value: wire },
        ],
      }
    },
  },
]

/** Sayings of the trade, each held against the numbers. */
export const misconceptions: Exercise = {
  id: 'misconceptions',
  title: () => 'Right or wrong?',
  teaches: ({ say }) =>
    say(
      'Sayings heard beside the line, each held against the numbers.',
      'What people say, and what is true.',
    ),
  timed: false,
  count: STATEMENTS.length,
  rests: 'Both models and the exact binomial; invented packs.',
  questions: (voice) =>
    STATEMENTS.map(({ claim, check }): Question => {
      const { holds, outcome, because, title, unit, bars } = check(voice)
      return {
        situation: `“${voice.say(...claim)}”`,
        facts: [],
        ask: 'Is that right?',
        answer: {
          kind: 'choice',
          choices: [
            { id: 'right', words: 'Right' },
            { id: 'wrong', words: 'Wrong' },
          ],
          right: holds ? 'right' : 'wrong',
        },
        outcome,
        reason: [because],
        pictures: [{ kind: 'bars', title, unit, bars }],
      }
    }),
}
