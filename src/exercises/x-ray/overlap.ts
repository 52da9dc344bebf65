import type { Exercise } from '../exercise.ts'
import { howMuchLarger } from '../how-much-smaller.ts'
import { mm } from '../numbers.ts'
import { withXray } from '../practice.ts'

const bags = [1, 2, 3].map((lying) => ({
  lying,
  seen: withXray({
    product: { food: 'rice' },
    point: { heightMm: 30 * lying },
    contaminants: [{ material: 'quartz' }],
  }),
}))
const NAMES = ['one bag', 'two, one on the other', 'three'] as const

/** Packs that lie on each other before an x-ray machine. */
export const overlap: Exercise = {
  id: 'overlap',
  title: () => 'After the curve',
  about: () => 'Bags of rice before an x-ray machine, behind a curve of the belt.',
  teaches: ({ say }) =>
    say(
      'A size is promised for one pack alone; where packs overlap it does not hold, so spacing is part of the machine.',
      'Bags must lie apart. Where they lie on each other, small stones get through.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model with practice constants; an overlap taken as a pack of twice the height.',
  questions: ({ say, share }) => {
    const [one, two] = bags
    const [a, b] = [one!.seen().expectedMm[0] ?? null, two!.seen().expectedMm[0] ?? null]
    return [
      {
        situation: say(
          'Bags of rice, 30 mm high, pass an x-ray machine. Behind a curve of the belt they slide and lie one on the other; the machine runs on and rejects none.',
          'Bags of rice go through an x-ray machine. After a curve they lie one on the other.',
        ),
        facts: [
          { words: 'Bag', value: 'rice, 30 mm high' },
          { words: 'One bag alone', value: `a stone of ${mm(a)} is found` },
        ],
        ask: say(
          'What becomes of the smallest stone you may expect to find where they overlap?',
          'What happens to the smallest stone it finds?',
        ),
        answer: howMuchLarger(a, b),
        outcome: `From ${mm(a)} in one bag to ${mm(b)} where two lie on each other.`,
        reason: [
          say(
            `Twice the rice makes more pattern and lets fewer x-rays through: ${share(one!.seen().assessment.transmission.first)} of them pass one bag, ${share(two!.seen().assessment.transmission.first)} two.`,
            'More rice makes more pattern and less light.',
          ),
          say(
            'And what is rejected there is two packs at once, or the wrong one. Cure the spacing before the machine: a faster belt, guides, a stop when packs touch.',
            'Put the bags apart before the machine.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest stone expected to be found',
            unit: 'mm',
            bars: bags.map(({ seen }, at) => ({
              words: NAMES[at]!,
              value: seen().expectedMm[0] ?? null,
              none: 'not found',
            })),
          },
        ],
      },
    ]
  },
}
