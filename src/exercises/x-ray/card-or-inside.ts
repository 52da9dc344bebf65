import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { withXray } from '../practice.ts'

const MATERIALS = [
  { material: 'bone_poultry', words: 'chicken bone' },
  { material: 'pom', words: 'acetal plastic' },
  { material: 'steel', words: 'steel' },
] as const

const fillet = withXray({
  product: { food: 'chicken_breast', temperatureC: 3 },
  point: { heightMm: 25 },
  contaminants: MATERIALS.flatMap(({ material }) => [
    { material, placement: 'outside' as const },
    { material, placement: 'inside' as const },
  ]),
})

/** A test card on the pack against the same piece inside the food. */
export const cardOrInside: Exercise = {
  id: 'card-or-inside',
  title: () => 'On the card, in the food',
  about: ({ say }) =>
    say(
      'Three materials, on a test card and inside the meat.',
      'The same pieces on a card, and inside the meat.',
    ),
  teaches: ({ say }) =>
    say(
      'A test card on the pack adds its shadow to the food; a piece inside takes the place of food. For light pieces that is all the difference.',
      'A piece on a card shows better than the same piece inside the food.',
    ),
  timed: false,
  count: 1,
  rests:
    'X-ray model: attenuation of the piece alone on the card, less that of the food it displaces inside.',
  questions: ({ say }) => {
    const { expectedMm } = fillet()
    const sizes = MATERIALS.map(({ material, words }, at) => ({
      material,
      words,
      card: expectedMm[2 * at] ?? null,
      inside: expectedMm[2 * at + 1] ?? null,
    }))
    const loss = sizes.map(({ card, inside }) =>
      card === null ? 0 : inside === null ? Number.POSITIVE_INFINITY : inside / card,
    )
    const worst = sizes[loss.indexOf(Math.max(...loss))]!
    return [
      {
        situation: say(
          'Pieces on a test card on top of a chicken fillet are found down to small sizes. The same pieces may lie inside the meat.',
          'Pieces on a test card lie on a chicken fillet and are found. The same pieces may be inside the meat.',
        ),
        facts: [{ words: 'Food', value: 'chicken breast, 25 mm high' }],
        ask: say(
          'For which material does the card promise most too much?',
          'For which material does the card fool you most?',
        ),
        answer: {
          kind: 'choice',
          choices: sizes.map(({ material, words }) => ({ id: material.replaceAll('_', '-'), words })),
          right: worst.material.replaceAll('_', '-'),
        },
        outcome: sizes
          .map(({ words, card, inside }) => `${words}: ${mm(card)} on the card, ${mm(inside)} inside`)
          .join('; ')
          .concat('.'),
        reason: [
          say(
            'On the card the x-rays cross all of the food and the piece besides. Inside, the piece pushes food aside, and only the difference casts a shadow. Steel weakens the beam so much more than meat that it makes no matter; a plastic a little heavier than meat all but vanishes.',
            'On the card the piece comes on top of the food. Inside, it takes the place of food, and only the difference shows. Steel is so heavy that it does not matter. Light plastic nearly vanishes.',
          ),
          say(
            'So a card shows that the machine works as yesterday. What it finds in the product is shown by pieces in the product.',
            'So use the card for the daily check. Show what is really found with pieces inside the food.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest piece expected to be found',
            unit: 'mm',
            bars: sizes.flatMap(({ material, words, card, inside }) => [
              { words: `${words}, on the card`, value: card, none: 'not found' },
              {
                words: `${words}, inside`,
                value: inside,
                none: 'not found',
                choice: material.replaceAll('_', '-'),
              },
            ]),
          },
        ],
      },
    ]
  },
}
