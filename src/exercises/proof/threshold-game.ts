import type { Exercise, Question } from '../exercise.ts'
import { count, oneIn } from '../numbers.ts'
import type { Voice } from '../voice.ts'
import { cleanDensity, hills, pieceDensity, thresholdFor } from './threshold-hills.ts'

const RATES = [0.1, 0.01, 0.001, 0.0001, 0.00001] as const
const PACKS = 1_000_000
const PIECES = 50

/** Worth of a missed piece in good packs; the second is what a recall may cost. Invented, to be paid with. */
const PRICES = [200, 20_000] as const

/** What a million packs cost at a share of false rejects, in good packs. */
function costAt(rate: number, price: number) {
  const { threshold, missed } = thresholdFor(rate, hills())
  const rejected = rate * PACKS
  const gone = PIECES * missed
  return { rate, threshold, missed, rejected, gone, cost: rejected + gone * price }
}

const idOf = (rate: number) => `r${Math.round(1 / rate)}`

function roundAt(price: number, { say, share }: Voice): Question {
  const options = RATES.map((rate) => costAt(rate, price))
  const best = options.reduce((a, b) => (b.cost < a.cost ? b : a))
  const { standsOut, positions, pieceMm } = hills()
  const xs = Array.from({ length: 121 }, (_, at) => 2 + at * 0.05)
  return {
    situation: say(
      `A million bags of hazelnuts, a stone of ${pieceMm} mm in ${PIECES} of them. You set the threshold of the x-ray machine. A good bag rejected costs one bag; a stone that goes out costs ${count(price)} bags.`,
      `A million bags of nuts. In ${PIECES} of them is a small stone. You turn the knob that decides what is thrown out. A good bag thrown out costs one bag. A stone that goes out costs ${count(price)} bags.`,
    ),
    facts: [
      { words: 'Stones', value: `${PIECES} in ${count(PACKS)} bags` },
      { words: 'A stone missed costs', value: `${count(price)} bags` },
      { words: 'A good bag rejected costs', value: '1 bag' },
    ],
    ask: say('Which false-reject rate do you choose?', 'How many good bags do you throw out?'),
    answer: {
      kind: 'choice',
      choices: options.map(({ rate }) => ({ id: idOf(rate), words: oneIn(rate) })),
      right: idOf(best.rate),
    },
    outcome: `${count(best.rejected)} good bags rejected and ${count(best.gone)} of ${PIECES} stones missed, ${count(best.cost)} bags in all.`,
    reason: [
      say(
        `The two hills overlap. A clean bag is looked at in about ${count(Number(positions.toPrecision(1)))} places, and the highest of so many readings makes the left hill; the stone makes the right one. Every threshold cuts both: further left it rejects more good bags, further right it lets more stones go.`,
        'A clean bag also has bright and dark spots. So the two hills overlap, and no place for the line is free of cost. Further left you throw out good bags, further right you let stones go.',
      ),
      say(
        `Where the cut belongs depends on what a miss costs against a false reject, and on how rare the stones are. ${share(options[1]!.missed)} of the stones are missed at ${oneIn(RATES[1])}; ${share(options[4]!.missed)} at ${oneIn(RATES[4])}.`,
        'What is right depends on what a mistake costs. If a stone costs little, leave the good bags alone. If it costs a recall, throw out more.',
      ),
      say(
        'A better machine moves the right hill to the right; a thinner pack narrows what hides. The threshold does neither: it only chooses between two mistakes.',
        'The knob makes no machine better. It only chooses between two mistakes.',
      ),
    ],
    pictures: [
      {
        kind: 'curves',
        title: 'Clean bags and bags with a stone',
        x: { words: say('Highest reading, in units of the noise', 'Reading of the machine'), unit: '' },
        y: { words: say('How often', 'How many bags'), unit: '', bare: true },
        curves: [
          { words: 'clean', points: xs.map((x) => [x, cleanDensity(x, positions)] as const), filled: true },
          {
            words: 'with a stone',
            points: xs.map((x) => [x, pieceDensity(x, standsOut)] as const),
            filled: true,
          },
        ],
        marks: options.map(({ threshold, rate }) => ({
          x: threshold,
          words: oneIn(rate),
          choice: idOf(rate),
        })),
      },
      {
        kind: 'bars',
        title: 'What a million bags cost, in bags',
        unit: 'bags',
        bars: options.map(({ rate, cost }) => ({ words: oneIn(rate), value: cost, choice: idOf(rate) })),
      },
    ],
  }
}

/** Clean and contaminated packs as two hills; misses and false rejects are paid for. */
export const thresholdGame: Exercise = {
  id: 'threshold-game',
  title: () => 'Where to set the threshold',
  about: ({ say }) =>
    say(
      'Good bags rejected against stones that go out: you pay for both.',
      'You set the knob, and you pay for both mistakes.',
    ),
  teaches: ({ say }) =>
    say(
      'A threshold chooses between misses and false rejects; only their prices tell where it belongs.',
      'The knob on the machine chooses between two mistakes. What they cost tells where it belongs.',
    ),
  timed: false,
  count: PRICES.length,
  rests: 'X-ray model with practice constants; prices and number of stones invented for the game.',
  questions: (voice) => PRICES.map((price) => roundAt(price, voice)),
}
