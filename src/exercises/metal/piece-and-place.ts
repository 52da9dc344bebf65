import { openingMap } from '../../coil/opening/opening-map.ts'
import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { once } from '../once.ts'
import { withCoil } from '../practice.ts'
import { openingScene } from './opening-scene.ts'

const METALS = [
  { material: 'steel', words: 'mild steel' },
  { material: 'ss316', words: 'stainless steel 316' },
] as const
const EDGE = 0.4
const MARGIN = 1.05

const contaminants = METALS.map(({ material }) => ({ material }))
const cheese = withCoil({
  product: { food: 'cheddar', temperatureC: 8, saltPct: 1.8 },
  point: { heightMm: 60, apertureHeightMm: 125, apertureWidthMm: 300 },
  contaminants,
})
/** Another line for the second question, so that the picture of the first does not answer it. */
const bread = withCoil({
  product: { food: 'bread' },
  point: { heightMm: 100, apertureHeightMm: 150, apertureWidthMm: 350 },
  contaminants,
})

/**
 * Balls found in the centre and beside the wall. At the wall the answer is r times as strong, and as it grows with the
 * third power of the ball, the ball there is smaller by r to the power 1/3 (holds where noise, not the food, decides).
 */
const ballsIn = (line: typeof cheese) =>
  once(() => {
    const { expectedMm, assessment } = line()
    const { widthMm, heightMm } = assessment.opening
    const map = openingMap({ widthM: widthMm / 1000, heightM: heightMm / 1000 }, [0, EDGE], [0])
    const stronger = map.find(({ across }) => across === EDGE)!.relative
    return METALS.flatMap(({ material, words }, at) => {
      const centre = expectedMm[at]!
      return [
        { id: `${material}-wall`, words: `${words}, beside the wall`, size: centre / Math.cbrt(stronger) },
        { id: `${material}-centre`, words: `${words}, in the centre`, size: centre },
      ]
    })
  })
const cheeseBalls = ballsIn(cheese)
const breadBalls = ballsIn(bread)

/** Why metal and place of a test piece decide what a check shows. */
export const pieceAndPlace: Exercise = {
  id: 'piece-and-place',
  title: () => 'Which piece, and where',
  about: ({ say }) =>
    say('Two metals, two places: which check shows most?', 'Which test piece, and where to put it?'),
  teaches: ({ say }) =>
    say(
      'A check proves the metal and the place it was made with, and nothing harder: take the hardest metal you must find, where it is hardest to find.',
      'Test with the metal that is hardest to find, in the place where it is hardest to find.',
    ),
  timed: false,
  count: 2,
  rests:
    'Metal detector model; sizes at the wall from the field map by the third power of the ball, an approximation.',
  questions: ({ say }) => {
    const all = cheeseBalls()
    const hardest = all.reduce((a, b) => (b.size > a.size ? b : a))
    const easiest = all.reduce((a, b) => (b.size < a.size ? b : a))
    const checked = breadBalls()
    const shown = Math.min(...checked.map(({ size }) => size)) * MARGIN
    const found = checked.filter(({ size }) => size <= shown)
    return [
      {
        situation: say(
          'Blocks of salted cheese pass a metal detector (balanced coil). Four checks are offered, each with the smallest ball that is expected to be found there.',
          'Salted cheese goes through a metal detector. Four checks are offered.',
        ),
        facts: [{ words: 'Opening', value: '300 × 125 mm, cheese 60 mm high' }],
        ask: say('Which check needs the largest ball?', 'Which check is the hardest?'),
        scene: openingScene(cheese().point),
        answer: {
          kind: 'choice',
          choices: all.map(({ id, words }) => ({ id, words })),
          right: hardest.id,
        },
        outcome: `It takes ${mm(hardest.size)} there; the easiest check takes ${mm(easiest.size)}.`,
        reason: [
          say(
            'Iron answers by its magnetism; stainless steel 316 answers weakly, and in salted food in the direction of the food. In the centre of the opening the field is weakest. Both at once make the hardest check.',
            'Iron is easy. Stainless steel is hard. The middle is hard. Both together are hardest.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest ball expected to be found',
            unit: 'mm',
            bars: all.map(({ id, words, size }) => ({ words, value: size, choice: id })),
          },
        ],
      },
      {
        situation: say(
          `A line for loaves of bread has been checked for a year with a ball of mild steel of ${mm(shown)}, carried beside the wall, and it was always found.`,
          `On a line for bread the check was made for a year with an iron ball of ${mm(shown)} beside the wall. The ball was always found.`,
        ),
        facts: [
          { words: 'Opening', value: '350 × 150 mm, bread 100 mm high' },
          { words: 'Check', value: `mild steel, ${mm(shown)}, beside the wall` },
        ],
        ask: say(
          'Mild steel or stainless steel 316, beside the wall or in the centre: of which is a ball of that size found?',
          'Iron or stainless steel, at the wall or in the middle: which balls of that size are found?',
        ),
        scene: openingScene(bread().point),
        answer: {
          kind: 'choice',
          choices: [
            { id: 'n4', words: 'All of them' },
            { id: 'n2', words: 'Mild steel in the centre too' },
            { id: 'n3', words: 'All but stainless steel in the centre' },
            { id: 'n1', words: 'None but the one that was carried' },
          ],
          right: `n${found.length}`,
        },
        outcome: `The ball had ${mm(shown)}. It takes, of ${checked.map(({ words, size }) => `${words}: ${mm(size)}`).join('; ')}.`,
        reason: [
          say(
            'A year of good checks was a year of asking the easiest question. The machine may be as good as promised; the record does not show it.',
            'The easiest question was asked every time. The record says nothing about stainless steel in the middle.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'What each place and metal needs in bread',
            unit: 'mm',
            bars: checked.map(({ words, size }) => ({ words, value: size })),
            line: { value: shown, words: `carried: ${mm(shown)}` },
          },
        ],
      },
    ]
  },
}
