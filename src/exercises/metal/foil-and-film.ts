import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { type Practice, withCoil, withXray } from '../practice.ts'

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

/** Foil and metallised film before a metal detector and before x-rays. */
export const foilAndFilm: Exercise = {
  id: 'foil-and-film',
  title: () => 'Foil and metallised film',
  teaches: ({ say }) =>
    say(
      'Foil closes a metal detector; metallised film only raises its size; to x-rays both are air.',
      'A metal detector cannot look through foil. X-rays can.',
    ),
  timed: false,
  count: 2,
  rests: 'Both models; sheet resistance of metallised film from the reference data, wide range.',
  questions: ({ say, share }) =>
    ['foil', 'film'].map((id) => {
      const plain = wraps[0]!
      const wrap = wraps.find((one) => one.id === id)!
      const [coilMm, xrayMm] = [wrap.coil().expectedMm[0] ?? null, wrap.xray().expectedMm[0] ?? null]
      const through = wrap.xray().assessment.packagingTransmission
      const finds = (size: number | null) => size !== null && size <= ASKED_MM
      const right = KINDS[(finds(coilMm) ? 0 : 2) + (finds(xrayMm) ? 0 : 1)]!
      return {
        situation: say(
          `Biscuits are wrapped in ${wrap.words}. A ball of stainless steel 304 of ${ASKED_MM} mm must be found inside the pack.`,
          `Biscuits are wrapped in ${wrap.words}. Inside lies a steel ball of ${ASKED_MM} mm.`,
        ),
        facts: [
          { words: 'Pack', value: `40 mm high, ${wrap.words}` },
          { words: 'Piece', value: `stainless steel 304, ${ASKED_MM} mm` },
        ],
        ask: say('What may be expected to find it?', 'Which machine finds it?'),
        answer: {
          kind: 'choice' as const,
          choices: [
            { id: 'both', words: 'Metal detector and x-ray' },
            { id: 'coil', words: 'Only the metal detector' },
            { id: 'xray', words: 'Only x-ray' },
            { id: 'neither', words: 'Neither' },
          ],
          right,
        },
        outcome: `Metal detector: ${mm(coilMm)}; x-ray: ${mm(xrayMm)}.`,
        reason: [
          id === 'foil'
            ? say(
                'A closed foil carries currents that cancel the field inside: the metal detector hears the foil and nothing behind it. Before the wrapping it hears the biscuits alone.',
                'The foil is metal itself. The detector hears the foil and nothing else. Put it before the wrapping machine.',
              )
            : say(
                `The metal on the film is some tens of millionths of a millimetre thick. It speaks all the same, and the size grows from ${mm(plain.coil().expectedMm[0] ?? null)} with plain film to ${mm(coilMm)}; practice often sees less than that, so a test on the bag decides.`,
                'The metal on the film is extremely thin. The detector hears it a little, so the piece must be bigger. Only a test on the real bag tells.',
              ),
          say(
            `To x-rays the wrap lets ${share(through)} through; it may as well not be there.`,
            'X-rays do not notice such a thin wrap.',
          ),
        ],
        pictures: [
          {
            kind: 'bars' as const,
            title: 'Smallest ball of stainless steel 304 expected to be found',
            unit: 'mm',
            bars: wraps.flatMap((one) => [
              {
                words: `metal detector, ${one.words}`,
                value: one.coil().expectedMm[0] ?? null,
                none: 'not found',
              },
              { words: `x-ray, ${one.words}`, value: one.xray().expectedMm[0] ?? null, none: 'not found' },
            ]),
            line: { value: ASKED_MM, words: `must be found: ${ASKED_MM} mm` },
          },
        ],
      }
    }),
}
