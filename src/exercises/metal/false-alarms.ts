import { productResponse } from '../../coil/food/product-block.ts'
import { situationOf } from '../../coil/situation.ts'
import type { CoilMachine } from '../../contract/index.ts'
import { binomialAtMost } from '../../numerics/binomial.ts'
import { magnitude } from '../../numerics/complex.ts'
import type { Exercise, Question } from '../exercise.ts'
import { count, oneIn, times } from '../numbers.ts'
import { once } from '../once.ts'
import { briefOf, machineOf, type Practice, withXray } from '../practice.ts'
import type { Voice } from '../voice.ts'

const PACKS_A_DAY = 60_000
const FALSE_SHARE = 0.001
const PIECES_PER_MILLION = 20
const CHANCE = 0.9

/** Of the rejects of a day, how many hold a piece. */
function inTheBin({ say, share }: Voice): Question {
  const falseOnes = PACKS_A_DAY * FALSE_SHARE
  const realOnes = PACKS_A_DAY * (PIECES_PER_MILLION / 1e6) * CHANCE
  const real = realOnes / (realOnes + falseOnes)
  const shares = [0.9, 0.5, 0.2, real]
  return {
    situation: say(
      `A line makes ${count(PACKS_A_DAY)} packs a day. ${PIECES_PER_MILLION} in a million hold a piece, of which the machine finds ${share(CHANCE)}. It also rejects ${oneIn(FALSE_SHARE)} good packs.`,
      `A line makes ${count(PACKS_A_DAY)} packs a day. Very few hold a piece: ${PIECES_PER_MILLION} in a million. The machine finds most of those. It also throws out ${oneIn(FALSE_SHARE)} good packs.`,
    ),
    facts: [
      { words: 'Packs a day', value: count(PACKS_A_DAY) },
      { words: 'With a piece', value: `${PIECES_PER_MILLION} in a million` },
      { words: 'False rejects', value: oneIn(FALSE_SHARE) },
    ],
    ask: say(
      'Of the packs in the reject bin, how many hold a piece?',
      'Of 100 packs in the bin, how many hold a piece?',
    ),
    answer: {
      kind: 'choice',
      // Whole numbers all: digits behind the point would tell which one was worked out.
      choices: shares.map((value, at) => ({ id: `c${at}`, words: share(Math.round(100 * value) / 100) })),
      right: 'c3',
    },
    outcome: `About ${count(realOnes)} a day with a piece, among ${count(falseOnes)} good ones.`,
    reason: [
      say(
        'Pieces are so rare that even a small share of false rejects outnumbers them. That does not make the machine bad: it makes every reject worth opening, because the one that matters looks like all the others.',
        'Pieces are very rare. So nearly all rejects are good packs, and the one that counts looks like the others. That is why every single one must be opened.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'In the reject bin after a day',
        unit: 'packs',
        bars: [
          { words: 'good packs', value: falseOnes },
          { words: 'packs with a piece', value: realOnes, choice: 'c3' },
        ],
      },
    ],
  }
}

/** What a second run of the same pack says. */
function runAgain({ say, share }: Voice): Question {
  const noise = FALSE_SHARE
  const piece = CHANCE
  const threeTimes = 1 - binomialAtMost(2, 3, piece)
  return {
    situation: say(
      'A rejected pack is run three more times, one way round and the other. It is rejected all three times. Opened, there is nothing in it.',
      'A pack was thrown out. It is run three more times and thrown out each time. Opened, nothing is found.',
    ),
    facts: [
      { words: 'False rejects', value: oneIn(noise) },
      { words: 'Rejected', value: '4 of 4 runs' },
    ],
    ask: say('What is the likeliest explanation?', 'What is the best explanation?'),
    answer: {
      kind: 'choice',
      choices: [
        { id: 'chance', words: say('Chance: the noise was high four times', 'Bad luck, four times over') },
        {
          id: 'pack',
          words: 'Something of the pack itself: a fold, a clip, a dense lump, or a piece overlooked',
        },
        { id: 'broken', words: 'The machine is broken' },
      ],
      right: noise ** 3 < 1 - threeTimes ? 'pack' : 'chance',
    },
    outcome: say(
      `By chance a good pack is rejected three times more once in ${count(noise ** -3)}; a piece found ${share(piece)} of the time gives ${share(threeTimes)}.`,
      `A good pack is thrown out by mistake once in ${count(1 / noise)} times. Three mistakes in a row on the same pack hardly happen.`,
    ),
    reason: [
      say(
        'Noise is new in each run, so a chance alarm does not come back. What comes back is in the pack. Look again, empty it through a sieve, put the parts through one by one; then ask what all such packs have in common.',
        'Bad luck does not repeat. So look again: sieve it, put the parts through one by one. Then ask what such packs have in common.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: say('Rejected three times more, by cause', 'Of 100 such packs, thrown out three more times'),
        unit: say('%', ''),
        bars: [
          { words: say('chance alone', 'bad luck alone'), value: noise ** 3 * 100, choice: 'chance' },
          { words: 'a piece found 9 times in 10', value: threeTimes * 100, choice: 'pack' },
        ],
      },
    ],
  }
}

const ham = (temperatureC: number): Practice => ({
  product: { food: 'ham', temperatureC },
  point: { heightMm: 60, apertureHeightMm: 125, apertureWidthMm: 300 },
  contaminants: [{ material: 'ss316' }],
})
const TEMPERATURES_C = [2, 7, 12, 17, 22]
const signals = once(() =>
  TEMPERATURES_C.map((temperatureC) => {
    const [point] = briefOf(ham(temperatureC)).points
    const situation = situationOf(machineOf('coil-single') as CoilMachine, point!)
    const scene = situation.sceneAt(situation.conductivity.valueSPerM, 'central')
    return scene.block ? magnitude(productResponse(scene.block, scene.opening.heightM, 300_000)) : 0
  }),
)

/** A row of metal alarms after a stop. */
function afterAStop({ say }: Voice): Question {
  const found = signals()
  const rise = found[2]! / found[0]!
  return {
    situation: say(
      'After a stop of half an hour a metal detector (balanced coil) rejects one pack of cooked ham after another. Before the stop it was quiet. The packs have stood in the warm hall.',
      'After a break the metal detector throws out one pack of ham after another. Before the break it was quiet. The packs stood in the warm hall.',
    ),
    facts: [{ words: 'Ham', value: 'learned at 2 °C, now about 12 °C' }],
    ask: say('What do you look at first?', 'What do you check first?'),
    answer: {
      kind: 'choice',
      choices: [
        { id: 'metal', words: 'Metal: a blade has broken' },
        { id: 'warm', words: 'The packs: warmer than what the machine has learned' },
        {
          id: 'threshold',
          words: say('The threshold: turn it up until it is quiet', 'The knob: turn it until it is quiet'),
        },
      ],
      right: rise > 1.1 ? 'warm' : 'metal',
    },
    outcome: `From 2 to 12 °C the signal of the ham itself grows ${times(rise)}.`,
    reason: [
      say(
        'A conducting food answers the coil, and the answer follows its temperature, about 2 % a degree. The machine has learned the cold signal; the warm one looks like metal in every pack. A row of alarms is a change of the product or of the machine; a broken blade makes few. Hold the packs all the same, cool them or learn the product anew, prove it with pieces, and run them again.',
        'Warm ham carries more current than cold ham. The machine has learned the cold one. So now every pack sounds like metal. Hold the packs, let the machine learn again, show that it finds the test pieces, and run them again.',
      ),
      say(
        'Turning the threshold up buys quiet with misses.',
        'Turning the knob until it is quiet means that it misses metal.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'Signal of the ham at 300 kHz, that at 2 °C being 1',
        unit: '',
        bars: TEMPERATURES_C.map((temperatureC, at) => ({
          words: `${temperatureC} °C`,
          value: found[at]! / found[0]!,
        })),
      },
    ],
  }
}

const oneBag = withXray({
  product: { food: 'rice' },
  point: { heightMm: 30 },
  contaminants: [{ material: 'quartz' }],
})
const twoBags = withXray({
  product: { food: 'rice' },
  point: { heightMm: 60 },
  contaminants: [{ material: 'quartz' }],
})

/** Two packs that overlap in the beam. */
function overlapping({ say, share }: Voice): Question {
  const [one, two] = [oneBag().assessment.transmission.first, twoBags().assessment.transmission.first]
  return {
    situation: say(
      'An x-ray machine rejects bags of rice in pairs, always with a dark band at the end of the bag. Opened, they hold rice.',
      'An x-ray machine throws out bags of rice two by two. The picture shows a dark band at the end. There is only rice in them.',
    ),
    facts: [{ words: 'Bags', value: 'rice, 30 mm high' }],
    ask: say('What makes the dark band?', 'Where does the dark band come from?'),
    answer: {
      kind: 'choice',
      choices: [
        { id: 'overlap', words: 'The bags lie over each other' },
        { id: 'moist', words: 'Moist rice' },
        { id: 'tube', words: 'The x-ray tube is ageing' },
      ],
      right: two < one * 0.9 ? 'overlap' : 'moist',
    },
    outcome: say(
      `One bag lets ${share(one)} of the x-rays through, two on top of each other ${share(two)}.`,
      `One bag lets ${share(one)} x-rays through, two on top of each other only ${share(two)}.`,
    ),
    reason: [
      say(
        'Where two bags overlap the beam crosses twice the food. The machine is right to see something dark; what is wrong is the spacing before it. Cure the feed, not the threshold.',
        'Two bags over each other are twice as thick, so darker. The machine is right. Put the bags further apart before it.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: say('X-rays let through', 'Of 100 x-rays, let through'),
        unit: say('%', ''),
        bars: [
          { words: 'one bag', value: one * 100 },
          { words: 'two bags', value: two * 100, choice: 'overlap' },
        ],
      },
    ],
  }
}

/** Four rejects, and what to make of each. */
export const falseAlarms: Exercise = {
  id: 'false-alarms',
  title: () => 'What set it off?',
  about: () => 'Four rejects, and what to make of each.',
  teaches: ({ say }) =>
    say(
      'A reject is a question: chance, product, pack, machine, or a piece. Each leaves its own trace.',
      'Every alarm has a cause. Learn to tell which.',
    ),
  timed: false,
  count: 4,
  rests: 'Both models and arithmetic; what to do first is common practice, no source.',
  questions: (voice) => [inTheBin(voice), runAgain(voice), afterAStop(voice), overlapping(voice)],
}
