import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { type Practice, withXray } from '../practice.ts'

const PIECES = [
  {
    id: 'wire',
    words: 'steel wire, 10 mm long',
    given: { material: 'ss304', shape: 'wire' as const, lengthMm: 10 },
  },
  { id: 'steel', words: 'steel ball', given: { material: 'ss304' } },
  { id: 'stone', words: 'stone', given: { material: 'quartz' } },
] as const

const practice: Practice = {
  product: { food: 'hazelnut' },
  point: { heightMm: 45 },
  contaminants: PIECES.map(({ given }) => given),
}
const coarse = withXray(practice, 'xray-dual')
const fine = withXray(practice, 'xray-dual-fine')

/** What half the pixel size brings, piece by piece. */
export const finePixels: Exercise = {
  id: 'fine-pixels',
  title: () => 'Finer pixels',
  about: () => 'The same machine with pixels half as wide, and three pieces.',
  teaches: ({ say }) =>
    say(
      'Fine pixels help what is smaller than a pixel and dense; what is larger than a pixel gains next to nothing.',
      'Finer pixels help for thin wire. For stones they hardly matter.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model with practice constants; two archetypes that differ in the pixel alone.',
  questions: ({ say }) => {
    const [a, b] = [coarse(), fine()]
    const ratio = PIECES.map((_, at) => (b.expectedMm[at] ?? 99) / (a.expectedMm[at] ?? 99))
    const best = PIECES[ratio.indexOf(Math.min(...ratio))]!
    return [
      {
        situation: say(
          'Two dual-energy machines look at bags of hazelnuts. The dearer one has pixels of 0.4 mm instead of 0.8 mm, and is the same in all else.',
          'Two x-ray machines. The dearer one has pixels half as wide. All else is the same.',
        ),
        facts: [
          { words: 'Pixel size', value: '0.8 mm against 0.4 mm' },
          { words: 'Food', value: 'hazelnuts, 45 mm deep' },
        ],
        ask: say('For which piece do the fine pixels bring most?', 'For which piece is it worth the money?'),
        answer: {
          kind: 'choice',
          choices: PIECES.map(({ id, words }) => ({ id, words })),
          right: best.id,
        },
        outcome: `From coarse to fine: ${PIECES.map(
          ({ words }, at) => `${words}: ${mm(a.expectedMm[at] ?? null)} to ${mm(b.expectedMm[at] ?? null)}`,
        ).join('; ')}.`,
        reason: [
          say(
            'A piece much thinner than a pixel fills only part of it, and its shadow is watered down by the food beside it. Halve the pixel and the shadow in it deepens. A stone of two millimetres covers many pixels anyway; it is hidden by grains and by too few x-rays, and there are no more x-rays for being sorted into finer boxes.',
            'A thin wire fills only a bit of a wide pixel, so its shadow is pale. In a narrow pixel the shadow is dark. A stone is bigger than the pixels anyway.',
          ),
          say(
            'Finer pixels also mean more places where noise may look like a piece, so at the same false rejects the threshold rises a little.',
            'More pixels also mean more places for a false alarm.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest piece expected to be found',
            unit: 'mm',
            bars: PIECES.flatMap(({ id, words }, at) => [
              { words: `${words}, 0.8 mm pixels`, value: a.expectedMm[at] ?? null },
              { words: `${words}, 0.4 mm pixels`, value: b.expectedMm[at] ?? null, choice: id },
            ]),
          },
        ],
      },
    ]
  },
}
