import type { Exercise } from '../exercise.ts'
import { howMuchLarger } from '../how-much-smaller.ts'
import { count, mm, oneIn } from '../numbers.ts'
import { withXray } from '../practice.ts'
import { falseRejectsPerDay } from './false-rejects-a-day.ts'

const RATES = [0.01, 0.001, 0.0001, 0.00001] as const
const LINE = { packsPerMin: 60, hoursPerDay: 16 }
const perDay = (falseRejectsPerPack: number) => count(falseRejectsPerDay({ ...LINE, falseRejectsPerPack }))

const settings = RATES.map((falseRejectsPerPack) => ({
  rate: falseRejectsPerPack,
  seen: withXray({
    product: { food: 'hazelnut' },
    point: { heightMm: 45, falseRejectsPerPack },
    contaminants: [{ material: 'quartz' }],
  }),
}))

/** False rejects and findable size on one dial. */
export const falseRejectDial: Exercise = {
  id: 'false-reject-dial',
  title: () => 'A quieter machine',
  about: ({ say }) =>
    say('The dial of an x-ray machine is turned until the bin stays empty.', 'Somebody turns the knob.'),
  teaches: ({ say }) =>
    say(
      'Size and false rejects stand on one dial: a size without its false-reject rate is half a sentence.',
      'A quiet machine finds only bigger stones. Ask for both numbers.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model with practice constants, solved anew at each false-reject rate.',
  questions: ({ say }) => {
    const from = settings[0]!
    const to = settings[2]!
    const [a, b] = [from, to].map(({ seen }) => seen().expectedMm[0] ?? null) as [
      number | null,
      number | null,
    ]
    return [
      {
        situation: say(
          `Bags of hazelnuts, 45 mm deep. The x-ray machine rejects ${oneIn(from.rate)} good bags, ${perDay(from.rate)} a day. That is too many, and it is set to ${oneIn(to.rate)}, ${perDay(to.rate)} a day.`,
          `The x-ray machine throws out ${perDay(from.rate)} good bags of nuts a day. The knob is turned: now only ${perDay(to.rate)}.`,
        ),
        facts: [
          { words: 'Before', value: `${oneIn(from.rate)}, a stone of ${mm(a)} is found` },
          { words: 'After', value: oneIn(to.rate) },
        ],
        ask: say(
          'What becomes of the smallest stone you may expect to find?',
          'What happens to the smallest stone it finds?',
        ),
        answer: howMuchLarger(a, b),
        outcome: `From ${mm(a)} to ${mm(b)}.`,
        reason: [
          say(
            'Fewer false rejects mean a higher threshold, and a piece must stand out further to cross it. In nuts the noise has a long tail: bright and dark spots of the nuts themselves reach far, so each step of the dial costs more than in an even food.',
            'To be quiet the machine must overlook the dark spots of the nuts. Then it overlooks small stones as well.',
          ),
          say(
            'When a supplier names a size, ask at which false-reject rate, on which product, over how many packs.',
            'When somebody names a size, ask how many good packs were thrown out.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest stone expected to be found, by false rejects',
            unit: 'mm',
            bars: settings.map(({ rate, seen }) => ({
              words: `${oneIn(rate)}, ${perDay(rate)} bags a day`,
              value: seen().expectedMm[0] ?? null,
            })),
          },
        ],
      },
    ]
  },
}
