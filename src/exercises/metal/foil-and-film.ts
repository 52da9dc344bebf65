import type { Exercise, Question } from '../exercise.ts'
import { howMuchLarger } from '../how-much-smaller.ts'
import { mm } from '../numbers.ts'
import { type Practice, withCoil, withXray } from '../practice.ts'
import type { Voice } from '../voice.ts'

const biscuits = (parts: NonNullable<Practice['point']['parts']>): Practice => ({
  product: { food: 'biscuit' },
  point: { heightMm: 40, parts },
  contaminants: [{ material: 'ss304' }, { material: 'steel' }],
})

const ASKED_MM = 2.5

const WRAPS = [
  { id: 'plain', words: 'plain film', parts: [{ material: 'pp', mm: 0.03, place: 'wrap' as const }] },
  {
    id: 'film',
    words: 'metallised film',
    parts: [{ material: 'metallised_film', mm: 0.03, place: 'wrap' as const }],
  },
  {
    id: 'foil',
    words: 'aluminium foil, 9 µm',
    parts: [{ material: 'aluminium_foil', mm: 0.009, place: 'wrap' as const }],
  },
]

const wraps = WRAPS.map((wrap) => ({
  ...wrap,
  coil: withCoil(biscuits(wrap.parts)),
  xray: withXray(biscuits(wrap.parts)),
}))

const KINDS = ['both', 'coil', 'xray', 'neither'] as const
const [plain, film, foil] = wraps as [(typeof wraps)[number], (typeof wraps)[number], (typeof wraps)[number]]
const coilSize = (wrap: typeof plain) => wrap.coil().expectedMm[0] ?? null
const xraySize = (wrap: typeof plain) => wrap.xray().expectedMm[0] ?? null
const TITLE = 'Smallest ball of stainless steel 304 expected to be found'

/** Which machine finds a ball behind foil. */
function behindFoil({ say, share }: Voice): Question {
  const finds = (size: number | null) => size !== null && size <= ASKED_MM
  const right = KINDS[(finds(coilSize(foil)) ? 0 : 2) + (finds(xraySize(foil)) ? 0 : 1)]!
  return {
    situation: say(
      `Biscuits are wrapped in ${foil.words}. A ball of stainless steel 304 of ${ASKED_MM} mm must be found inside the pack.`,
      `Biscuits are wrapped in ${foil.words}. Inside lies a steel ball of ${ASKED_MM} mm.`,
    ),
    facts: [
      { words: 'Pack', value: `40 mm high, ${foil.words}` },
      { words: 'Piece', value: `stainless steel 304, ${ASKED_MM} mm` },
    ],
    ask: say('What may be expected to find it?', 'Which machine finds it?'),
    answer: {
      kind: 'choice',
      choices: [
        { id: 'both', words: 'Metal detector and x-ray' },
        { id: 'coil', words: 'Only the metal detector' },
        { id: 'xray', words: 'Only x-ray' },
        { id: 'neither', words: 'Neither' },
      ],
      right,
    },
    outcome: `Metal detector: ${mm(coilSize(foil))}; x-ray: ${mm(xraySize(foil))}.`,
    reason: [
      say(
        'A closed foil carries currents that cancel the field inside: the metal detector hears the foil and nothing behind it. Before the wrapping it hears the biscuits alone.',
        'The foil is metal itself. The detector hears the foil and nothing else. Put it before the wrapping machine.',
      ),
      say(
        `To x-rays the wrap lets ${share(foil.xray().assessment.packagingTransmission)} through; it may as well not be there.`,
        'X-rays do not notice such a thin wrap.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: TITLE,
        unit: 'mm',
        bars: [plain, foil].flatMap((one) => [
          {
            words: `metal detector, ${one.words}`,
            value: coilSize(one),
            none: 'not found',
            ...(one === foil ? { choice: 'coil' } : {}),
          },
          {
            words: `x-ray, ${one.words}`,
            value: xraySize(one),
            none: 'not found',
            ...(one === foil ? { choice: 'xray' } : {}),
          },
        ]),
        line: { value: ASKED_MM, words: `must be found: ${ASKED_MM} mm` },
      },
    ],
  }
}

/** What metallised film does to the metal detector. */
function behindFilm({ say, share }: Voice): Question {
  const [bare, filmed] = [coilSize(plain), coilSize(film)]
  return {
    situation: say(
      `The same biscuits in ${film.words}: plastic with a breath of aluminium on it, before the metal detector (balanced coil).`,
      'The same biscuits in shiny film: plastic with a breath of aluminium on it. They go through the metal detector.',
    ),
    facts: [
      { words: 'Pack', value: `40 mm high, ${film.words}` },
      { words: 'In plain film', value: `a ball of ${mm(bare)} is found` },
    ],
    ask: say(
      'What becomes of the smallest ball the metal detector may be expected to find?',
      'What happens to the smallest ball it finds?',
    ),
    answer: howMuchLarger(bare, filmed),
    outcome: `From ${mm(bare)} in plain film to ${mm(filmed)}; x-ray ${mm(xraySize(film))} as before.`,
    reason: [
      say(
        'The metal on the film is some tens of millionths of a millimetre thick. A closed tube of it carries currents all the same, and the detector hears them with each pack. Practice often sees less than that, so a test on the bag decides.',
        'The metal on the film is extremely thin. The detector hears it all the same, so the piece must be bigger. Only a test on the real bag tells.',
      ),
      say(
        `To x-rays the film lets ${share(film.xray().assessment.packagingTransmission)} through.`,
        'X-rays do not notice it.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: TITLE,
        unit: 'mm',
        bars: [
          { words: 'metal detector, plain film', value: bare, none: 'not found' },
          { words: 'metal detector, metallised film', value: filmed, none: 'not found' },
          { words: 'x-ray, metallised film', value: xraySize(film), none: 'not found' },
        ],
      },
    ],
  }
}

/** Foil and metallised film before a metal detector and before x-rays. */
export const foilAndFilm: Exercise = {
  id: 'foil-and-film',
  title: () => 'Foil and metallised film',
  about: ({ say }) =>
    say(
      'Biscuits in foil and in metallised film before two kinds of machine.',
      'Biscuits in foil, and in shiny film.',
    ),
  teaches: ({ say }) =>
    say(
      'Foil closes a metal detector; metallised film only raises its size; to x-rays both are air.',
      'A metal detector cannot look through foil. X-rays can.',
    ),
  timed: false,
  count: 2,
  rests: 'Both models; sheet resistance of metallised film from the reference data, wide range.',
  questions: (voice) => [behindFoil(voice), behindFilm(voice)],
}
