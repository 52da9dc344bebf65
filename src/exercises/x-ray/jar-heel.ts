import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { withXray } from '../practice.ts'
import { jarPicture } from './jar-picture.ts'

const jar = withXray(
  {
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
  },
  'xray-side',
)

/** Glass in a glass jar: the places a side beam does not see into. */
export const jarHeel: Exercise = {
  id: 'jar-heel',
  title: () => 'The heel of the jar',
  about: () => 'A splinter of glass in a glass jar, seen from the side.',
  teaches: ({ say }) =>
    say(
      'Where the glass turns, the beam runs through several walls at once; on the base it runs along the glass and sees nothing.',
      'Glass lies best hidden where the jar itself is thickest.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model; heel and shoulder taken as three times the wall (common practice says 3 to 10 times).',
  questions: ({ say }) => {
    const zones = jar().assessment.findings[0]!.zones
    const middle = zones.find(({ name }) => name === 'body')
    const heel = zones.find(({ name }) => name === 'heel')
    // Glass sinks: of the places that hide it only those count where it comes to rest.
    const worst = zones
      .filter(({ canLieThere }) => canLieThere)
      .reduce((a, b) => ((b.sizes.expectedMm ?? 99) > (a.sizes.expectedMm ?? 99) ? b : a))
    const elsewhere = zones.filter(({ state, canLieThere }) => state === 'blind' && !canLieThere)
    const blind = elsewhere.map(({ name }) => `the ${name}`).join(' and ')
    return [
      {
        situation: say(
          'A splinter of glass has fallen into a jar of sauce and sinks. The jar stands before an x-ray machine that looks from the side.',
          'A bit of glass has fallen into a jar of sauce and sinks. An x-ray machine looks at the jar from the side.',
        ),
        facts: [
          { words: 'Jar', value: 'glass, 68 mm wide, wall 2.5 mm, base 4 mm' },
          { words: 'Machine', value: 'x-ray from the side, one view' },
        ],
        ask: say(
          'Where it comes to rest, where is it hidden best?',
          'Where it comes to rest, where does it hide best?',
        ),
        scene: jarPicture('The places of the jar, as the beam from the side sees it', zones, false),
        answer: {
          kind: 'choice',
          choices: zones.map(({ name }) => ({ id: name.replace(/\s/g, '-'), words: `The ${name}` })),
          right: worst.name.replace(/\s/g, '-'),
        },
        outcome: `${worst.sizes.expectedMm === null ? 'Nothing is found there at any size computed' : `Found there: ${mm(worst.sizes.expectedMm)}`}; in the body ${mm(middle?.sizes.expectedMm ?? null)}.${blind ? ` Blind as well: ${blind}, but glass sinks.` : ''}`,
        reason: [
          say(
            `${worst.why.charAt(0).toUpperCase()}${worst.why.slice(1)}. In the heel the beam crosses about ${heel?.pathMm} mm of glass against ${middle?.pathMm} mm in the body, and the unevenness of the glass looks like the splinter itself: ${mm(heel?.sizes.expectedMm ?? null)} there.`,
            'There the x-rays run through so much glass of the jar that a splinter makes no difference.',
          ),
          say(
            'Heavy splinters sink. So a test piece belongs on the base and in the heel, a second view or a beam tilted down helps, and glass must be kept out before filling: turn and rinse the jar, remove jars around a breakage.',
            'And glass sinks to the bottom. So test there, and above all keep glass out before filling.',
          ),
        ],
        pictures: [
          jarPicture('What is found where', zones, true),
          {
            kind: 'bars',
            title: 'Smallest piece of glass expected to be found, by place',
            unit: 'mm',
            bars: zones.map(({ name, sizes, canLieThere }) => ({
              words: canLieThere ? `${name}: glass comes to rest here` : name,
              value: sizes.expectedMm,
              none: 'nothing is found',
              choice: name.replace(/\s/g, '-'),
            })),
          },
        ],
      },
    ]
  },
}
