import type { Exercise } from '../exercise.ts'
import { howMuchSmaller } from '../how-much-smaller.ts'
import { mm, times } from '../numbers.ts'
import { withCoil } from '../practice.ts'
import { openingScene } from './opening-scene.ts'

const HEIGHTS_MM = [350, 250, 175, 125, 100] as const

const openings = HEIGHTS_MM.map((heightMm) => ({
  heightMm,
  seen: withCoil({
    product: { food: 'biscuit' },
    point: { heightMm: 40, apertureHeightMm: heightMm, apertureWidthMm: 350 },
    contaminants: [{ material: 'steel' }],
  }),
}))

/** The opening of a metal detector against the ball it finds. */
export const openingSize: Exercise = {
  id: 'opening-size',
  title: () => 'The size of the opening',
  about: ({ say }) =>
    say('A high opening or a low one round the same box.', 'A big opening or a small one for the same box.'),
  teaches: ({ say }) =>
    say(
      'The field of a coil thins out with its opening: a machine bought for the largest pack finds less in all others.',
      'A small opening finds small pieces. A big one finds only big ones.',
    ),
  timed: false,
  count: 1,
  rests: 'Metal detector model: field on the axis of the coil, noise growing with the opening (assumption).',
  questions: ({ say }) => {
    const [, large, , small] = openings
    const [a, b] = [large!.seen().expectedMm[0] ?? null, small!.seen().expectedMm[0] ?? null]
    return [
      {
        situation: say(
          `Boxes of dry biscuits, 40 mm high, pass a metal detector (balanced coil) with an opening ${large!.heightMm} mm high, bought for a larger box that is no longer made.`,
          `Flat boxes of biscuits go through a metal detector with a very high opening. It was bought for a bigger box.`,
        ),
        facts: [
          { words: 'Box', value: '40 mm high' },
          { words: 'Opening now', value: `${large!.heightMm} × 350 mm` },
          { words: 'Opening offered', value: `${small!.heightMm} × 350 mm` },
        ],
        ask: say(
          'With the lower opening, what becomes of the smallest iron ball found in its middle?',
          'What happens to the smallest iron ball it finds?',
        ),
        scene: openingScene(large!.seen().point),
        answer: howMuchSmaller(a, b),
        outcome: `From ${mm(a)} to ${mm(b)}.`,
        reason: [
          say(
            `In the middle of the opening a piece is farthest from the coils, and its answer falls steeply with that distance; the answer itself grows with the third power of the ball. The two together ask a ball ${times((a ?? 0) / (b ?? 1))} as large.`,
            'In the middle of a big opening a piece is far from the coils. The detector hears it badly, so it must be bigger.',
          ),
          say(
            'Hence the size to test is the one in the middle of the opening, and an opening should leave the pack room, no more.',
            'So always test in the middle of the opening. And do not buy a bigger opening than the pack needs.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest iron ball expected to be found in the middle of the opening',
            unit: 'mm',
            bars: openings.map(({ heightMm, seen }) => ({
              words: `opening ${heightMm} mm high`,
              value: seen().expectedMm[0] ?? null,
            })),
          },
        ],
      },
    ]
  },
}
