import { productResponse } from '../../coil/food/product-block.ts'
import { pieceOf } from '../../coil/piece/piece.ts'
import { targetPolarizability } from '../../coil/piece/target.ts'
import { situationOf } from '../../coil/situation.ts'
import type { CoilMachine } from '../../contract/index.ts'
import type { Complex } from '../../numerics/complex.ts'
import type { Exercise } from '../exercise.ts'
import { once } from '../once.ts'
import { machineOf, withCoil } from '../practice.ts'
import { openingScene } from './opening-scene.ts'

const BALLS = ['steel', 'brass', 'ss316'] as const
const NAMES = ['mild steel', 'brass', 'stainless steel 316']
const BALL_MM = 3

const cheese = withCoil({
  product: { food: 'cheddar', temperatureC: 8, saltPct: 1.8 },
  point: { heightMm: 60, apertureHeightMm: 125, apertureWidthMm: 300 },
  contaminants: BALLS.map((material) => ({ material })),
})

const answerOf = ({ re, im }: Complex) => ({ resistive: -im, reactive: re })
type Direction = ReturnType<typeof answerOf>

/** Angle between two answers as lines, 0 to 90 degrees: turned by half a circle they are told apart no better. */
function apartDeg(a: Direction, b: Direction): number {
  const along = Math.abs(a.resistive * b.resistive + a.reactive * b.reactive)
  const lengths = Math.hypot(a.resistive, a.reactive) * Math.hypot(b.resistive, b.reactive)
  return (Math.acos(Math.min(1, along / lengths)) * 180) / Math.PI
}

/** Directions of food and balls at the frequency the machine chose. */
const directions = once(() => {
  const { point, brief, assessment } = cheese()
  const situation = situationOf(machineOf('coil-single') as CoilMachine, point)
  const scene = situation.sceneAt(situation.conductivity.valueSPerM, 'central')
  const kHz = assessment.frequenciesKHz[0]!
  const food = answerOf(productResponse(scene.block!, scene.opening.heightM, kHz * 1000))
  const balls = brief.contaminants.map((contaminant) => {
    const { shape, metal } = pieceOf(contaminant)!
    return answerOf(targetPolarizability(shape, BALL_MM, 'along', metal, kHz * 1000))
  })
  return { kHz, food, balls, apart: balls.map((ball) => apartDeg(ball, food)) }
})

/** A wet food answers the coil too; what points the same way is lost in it. */
export const productEffect: Exercise = {
  id: 'product-effect',
  title: () => 'The food answers too',
  about: ({ say }) =>
    say(
      'Salted cheese and three balls: who answers in the same direction?',
      'Salted cheese and three balls of metal.',
    ),
  teaches: ({ say }) =>
    say(
      'A detector turns its ear away from the food; a metal that answers in the same direction is turned away from too.',
      'The detector learns not to hear the food. A metal that sounds like the food is then not heard either.',
    ),
  timed: false,
  count: 1,
  rests:
    'Metal detector model: polarizability of a conducting, magnetic ball; the cheese as a conducting block.',
  questions: ({ say }) => {
    const { kHz, food, balls, apart } = directions()
    const nearest = apart.indexOf(Math.min(...apart))
    return [
      {
        situation: say(
          `Salted cheese passes a metal detector (balanced coil) that runs at ${kHz} kHz. The cheese carries currents and answers the coil itself, almost purely as a loss: the product signal. The machine learns that direction, called the phase of the product, and listens across it.`,
          'Salted cheese goes through a metal detector. The cheese answers too. The machine learns how the cheese sounds and stops listening to that sound.',
        ),
        facts: [
          { words: 'Food', value: 'cheddar, 8 °C, 1.8 % salt' },
          { words: 'Balls', value: `${BALL_MM} mm: ${NAMES.join(', ')}` },
        ],
        ask: say(
          'Which ball answers most nearly in the direction of the cheese, and is lost with it?',
          'Which ball sounds most like the cheese?',
        ),
        scene: openingScene(cheese().point),
        answer: {
          kind: 'choice',
          choices: BALLS.map((id, at) => ({ id, words: `The ball of ${NAMES[at]}` })),
          right: BALLS[nearest]!,
        },
        outcome: say(
          `Degrees from the direction of the cheese: ${NAMES.map((name, at) => `${name} ${Math.round(apart[at]!)}`).join(', ')}.`,
          'The others sound quite different from the cheese.',
        ),
        reason: [
          say(
            'Iron answers by its magnetism, in step with the field; a good conductor pushes the field out, the other way. Stainless steel, not magnetic and a poor conductor, answers by losses at low frequency, as wet food does.',
            'Iron is magnetic, brass is a good conductor: both sound different. Stainless steel is neither, and so is wet cheese.',
          ),
          say(
            'A higher frequency turns stainless steel away from the food, but the food grows louder still. Where that does not pay, the size found in the product stays far above the one found empty.',
            'That is why stainless steel must be so much bigger in wet food.',
          ),
        ],
        pictures: [
          {
            kind: 'plane',
            title: say(`Directions of the answers at ${kHz} kHz`, 'How they sound, drawn as directions'),
            answers: [
              { words: 'cheese', ...food },
              ...balls.map((ball, at) => ({ words: NAMES[at]!, choice: BALLS[at]!, ...ball })),
            ],
          },
          {
            kind: 'bars',
            title: say('Apart from the direction of the cheese', 'How different they sound'),
            unit: '°',
            bars: BALLS.map((choice, at) => ({ words: NAMES[at]!, value: apart[at]!, choice })),
          },
        ],
      },
    ]
  },
}
