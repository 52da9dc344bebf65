import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { type Practice, withXray } from '../practice.ts'
import { jarPicture } from './jar-picture.ts'

const jar: Practice = {
  product: { food: 'tomato_sauce' },
  point: {
    heightMm: 95,
    widthMm: 68,
    lengthMm: 68,
    outline: 'cylinder',
    parts: [
      { material: 'glass_container', mm: 2.5, place: 'wall' },
      { material: 'glass_container', mm: 4, place: 'base' },
      { material: 'steel', mm: 0.17, place: 'closure' },
    ],
  },
  contaminants: [{ material: 'glass_container' }],
}
const level = withXray(jar, 'xray-side')
const tilted = withXray(jar, 'xray-side-two-views')

/** What a second, tilted view brings in a standing jar. */
export const tiltedView: Exercise = {
  id: 'tilted-view',
  title: () => 'A second, tilted view',
  about: () => 'A jar of sauce, one level beam, and a second one that looks down aslant.',
  teaches: ({ say }) =>
    say(
      'A second view is worth what the first cannot see: ask which place it opens, and how large a piece it still needs there.',
      'A second view helps where the first one is blind. Nowhere else does it help much.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model; the second view tilted by 20 degrees, what one view misses the other may miss too.',
  questions: ({ say }) => {
    const before = level().assessment.findings[0]!.zones
    const after = tilted().assessment.findings[0]!.zones
    const rows = before
      .filter(({ canLieThere, name }) => canLieThere || name === 'body')
      .map((zone) => {
        const later = after.find(({ name }) => name === zone.name)?.sizes.expectedMm ?? null
        const first = zone.sizes.expectedMm
        const gain = later === null ? 1 : first === null ? Number.POSITIVE_INFINITY : first / later
        return { name: zone.name, first, later, gain }
      })
    const best = rows.reduce((a, b) => (b.gain > a.gain ? b : a))
    return [
      {
        situation: say(
          'An x-ray machine looks at a standing jar of sauce from the side with a level beam. The dearer one adds a second beam, tilted by 20 degrees so that it crosses the bottom of the jar aslant.',
          'An x-ray machine looks at a jar from the side. The dearer one also looks down aslant.',
        ),
        facts: [
          { words: 'Jar', value: 'glass, 68 mm wide, wall 2.5 mm, base 4 mm' },
          { words: 'Piece', value: 'a splinter of glass' },
        ],
        ask: say('Where does the second view bring most?', 'Where does it help most?'),
        scene: jarPicture('The jar, and the level beam', before, false),
        answer: {
          kind: 'choice',
          choices: rows.map(({ name }) => ({ id: name.replace(/\s/g, '-'), words: `In the ${name}` })),
          right: best.name.replace(/\s/g, '-'),
        },
        outcome: `${rows.map(({ name, first, later }) => `${name}: ${first === null ? 'nothing' : mm(first)} with one view, ${later === null ? 'nothing' : mm(later)} with two`).join('; ')}.`,
        reason: [
          say(
            'A level beam runs along the base and cannot see what lies in it. Tilted, it crosses the base once and the wall once, a few times the glass of the body but not the whole width of it.',
            'The level beam runs along the bottom and sees only glass. The tilted one goes across it.',
          ),
          say(
            'The size there stays larger than in the body, and in the body the second view brings nothing. So glass is still kept out before filling.',
            'Even so it needs a bigger splinter there. So keep glass out before filling.',
          ),
        ],
        pictures: [
          jarPicture('What is found where, with both views', after, true),
          {
            kind: 'bars',
            title: 'Smallest splinter expected to be found',
            unit: 'mm',
            bars: rows.flatMap(({ name, first, later }) => [
              { words: `${name}, one view`, value: first, none: 'nothing is found' },
              {
                words: `${name}, two views`,
                value: later,
                none: 'nothing is found',
                choice: name.replace(/\s/g, '-'),
              },
            ]),
          },
        ],
      },
    ]
  },
}
