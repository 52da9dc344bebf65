import type { Exercise } from '../exercise.ts'
import { count, mm, times } from '../numbers.ts'
import { withCoil } from '../practice.ts'
import { openingScene } from './opening-scene.ts'

const BALLS = ['steel', 'brass', 'ss316'] as const
const contaminants = BALLS.map((material) => ({ material }))
const opening = { heightMm: 60, apertureHeightMm: 125, apertureWidthMm: 300 }

const cheese = withCoil({
  product: { food: 'cheddar', temperatureC: 8, saltPct: 1.8 },
  point: opening,
  contaminants,
})
/** Dry biscuits add no signal: the opening as good as empty. */
const empty = withCoil({ product: { food: 'biscuit' }, point: opening, contaminants })

const NAMES = ['mild steel', 'brass', 'stainless steel 316']

/** A size quoted with the machine empty against the one in salted cheese. */
export const emptyOrProduct: Exercise = {
  id: 'empty-or-product',
  title: () => 'Quoted empty, used full',
  about: ({ say }) =>
    say(
      'A size read in the empty opening, and a wet, salted product.',
      'Shown empty, used with your cheese.',
    ),
  teaches: ({ say }) =>
    say(
      'A size read in the empty opening says little about a wet, salted food, and least about stainless steel.',
      'What a detector finds when empty is not what it finds in your food.',
    ),
  timed: false,
  count: 1,
  rests: 'Metal detector model; conductivity of the cheese from the reference data with its salt.',
  questions: ({ say }) => {
    const [dry, wet] = [empty(), cheese()]
    const at = BALLS.length - 1
    const [a, b] = [dry.expectedMm[at] ?? null, wet.expectedMm[at] ?? null]
    const ratios = BALLS.map((_, i) => {
      const [from, to] = [dry.expectedMm[i], wet.expectedMm[i]]
      return from && to ? to / from : Number.POSITIVE_INFINITY
    })
    const worst = ratios.indexOf(Math.max(...ratios))
    return [
      {
        situation: say(
          `A quote names balls: ${BALLS.map((_, i) => `${NAMES[i]} ${mm(dry.expectedMm[i] ?? null)}`).join(', ')}. They were read with nothing in the opening. Your product is a salted cheese, 60 mm high.`,
          `A salesman shows what is found: ${BALLS.map((_, i) => `${NAMES[i]} ${mm(dry.expectedMm[i] ?? null)}`).join(', ')}. The machine was empty. You make salted cheese.`,
        ),
        facts: [
          { words: 'Opening', value: '125 × 300 mm' },
          { words: 'Food', value: 'cheddar, 8 °C, 1.8 % salt' },
        ],
        ask: say(
          'Which ball loses most when the cheese comes into the opening?',
          'Which ball is hit hardest when the cheese goes in?',
        ),
        scene: openingScene(cheese().point),
        answer: {
          kind: 'choice',
          choices: BALLS.map((id, i) => ({ id, words: NAMES[i]! })),
          right: BALLS[worst]!,
        },
        outcome: `In the cheese: ${BALLS.map((_, i) => `${NAMES[i]} ${mm(wet.expectedMm[i] ?? null)}`).join(', ')}.`,
        reason: [
          say(
            `The cheese carries currents like ${count(wet.assessment.background[0]!.productOverSteelBall)} balls of mild steel of 1 mm. The machine answers by going down to ${wet.assessment.frequenciesKHz.join(', ')} kHz, where the food is quieter; at that frequency stainless steel, a poor conductor, is quiet too, while iron still answers by its magnetism.`,
            'Salted cheese carries current and makes a noise of its own. The machine goes to a low tone, where the cheese is quieter. There stainless steel is quiet as well. Iron still shouts.',
          ),
          say(
            `Stainless steel grows ${Number.isFinite(ratios[at]!) ? times(ratios[at]!) : 'beyond all sizes'}, from ${mm(a)} to ${mm(b)}. Ask for runs in your product, at its warmest and saltiest.`,
            'So ask to see it in your own product, at its warmest and saltiest.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest ball expected to be found',
            unit: 'mm',
            bars: BALLS.flatMap((_, i) => [
              { words: `${NAMES[i]}, dry`, value: dry.expectedMm[i] ?? null, none: 'not found' },
              {
                words: `${NAMES[i]}, in cheese`,
                value: wet.expectedMm[i] ?? null,
                none: 'not found',
                choice: BALLS[i]!,
              },
            ]),
          },
        ],
      },
    ]
  },
}
