import { openingMap } from '../../coil/opening/opening-map.ts'
import type { Exercise } from '../exercise.ts'
import { once } from '../once.ts'

const OPENING = { widthM: 0.3, heightM: 0.125 }
const FOOD = { widthMm: 200, heightMm: 60 }
/** Off the wall by a tenth of the width and 15 % of the height: a ball never touches the wire. */
const ACROSS = 0.4
const UP = 0.35

const PLACES = [
  { id: 'centre', words: 'In the centre', across: 0, up: 0 },
  { id: 'side', words: 'Beside the left or right wall', across: ACROSS, up: 0 },
  { id: 'top', words: 'Under the top, in the middle', across: 0, up: UP },
  { id: 'corner', words: 'In a corner', across: ACROSS, up: UP },
] as const

const heard = once(() => {
  const map = openingMap(OPENING, [0, ACROSS], [0, UP])
  return PLACES.map(
    ({ across, up }) => map.find((place) => place.across === across && place.up === up)!.relative,
  )
})

/** Where in the opening of a metal detector a ball is heard least. */
export const centreOrEdge: Exercise = {
  id: 'centre-or-edge',
  title: () => 'Centre or edge',
  about: () => 'One ball, four places in the opening of a metal detector.',
  teaches: ({ say }) =>
    say(
      'The field is weakest far from the wires, so the check belongs where the opening is widest away from them: a check at the edge flatters the machine.',
      'In the middle the detector hears least. A check at the edge makes it look better than it is.',
    ),
  timed: false,
  count: 1,
  rests: 'Metal detector model: three bare rectangular loops, field by Biot and Savart; no case, no shield.',
  questions: ({ say }) => {
    const strengths = heard()
    const least = strengths.indexOf(Math.min(...strengths))
    const most = Math.max(...strengths)
    const drawn = (words: readonly string[]) =>
      PLACES.map(({ id, across, up }, at) => ({ across: -across, up, words: words[at]!, choice: id }))
    return [
      {
        situation: say(
          'The same small ball is carried through a metal detector (balanced coil) four times: once at each of four places of the opening.',
          'The same small ball goes through a metal detector four times, each time at another place.',
        ),
        facts: [{ words: 'Opening', value: '300 × 125 mm' }],
        ask: say('Where is it heard least?', 'Where is it hardest to find?'),
        scene: {
          kind: 'opening',
          title: 'The opening, seen along the travel',
          widthMm: OPENING.widthM * 1000,
          heightMm: OPENING.heightM * 1000,
          food: FOOD,
          places: drawn(['A', 'B', 'C', 'D']),
        },
        answer: {
          kind: 'choice',
          choices: PLACES.map(({ id, words }) => ({ id, words })),
          right: PLACES[least]!.id,
        },
        outcome: `At the place where it is heard best it answers ${(most / strengths[least]!).toFixed(1)} times as strongly.`,
        reason: [
          say(
            'The field of a loop is strong beside its wire and thins out towards the middle, both for the loop that sends and for those that listen. The answer goes with the product of the two.',
            'Near the wires the field is strong, in the middle it is weak.',
          ),
          say(
            'As the answer grows with the third power of a ball, twice the answer is a ball a fifth smaller. Carry the test piece where pieces are hardest to find in your pack, in the middle of the opening, and say so on the record.',
            'So the test piece goes through the middle. Write down where it went through.',
          ),
        ],
        pictures: [
          {
            kind: 'opening',
            title: 'The same in the opening',
            widthMm: OPENING.widthM * 1000,
            heightMm: OPENING.heightM * 1000,
            food: FOOD,
            places: drawn(strengths.map((strength) => strength.toFixed(1))),
          },
          {
            kind: 'bars',
            title: 'How strongly the ball is heard, the centre being 1',
            unit: '',
            bars: PLACES.map(({ id, words }, at) => ({ words, value: strengths[at]!, choice: id })),
          },
        ],
      },
    ]
  },
}
