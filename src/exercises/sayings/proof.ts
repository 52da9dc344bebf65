import { lowerBound, upperBound } from '../../numerics/binomial.ts'
import { count } from '../numbers.ts'
import type { Saying } from './saying.ts'

export const threeOfThree: Saying = {
  claim: [
    'Three test pieces found of three: the machine finds at least nine in ten.',
    'Three pieces run, three found: so the machine finds nearly all.',
  ],
  check: ({ say, share }) => {
    const bound = lowerBound(3, 3, 0.95)
    return {
      holds: bound >= 0.9,
      outcome: say(
        `Three of three shows at least ${share(bound)}, 95 % sure.`,
        `Only ${share(bound)} is sure.`,
      ),
      because: say(
        'A machine that misses half of them finds three of three in one try in eight. It takes 29 of 29 to show nine in ten.',
        'A machine that misses every second piece can find three in a row by luck. To be sure of nine in ten it takes 29 pieces, all found.',
      ),
      title: say('Shown at the least, 95 % sure', 'Surely found, of 100'),
      unit: say('%', ''),
      bars: [3, 10, 29, 59].map((runs) => ({
        words: `${runs} of ${runs} found`,
        value: lowerBound(runs, runs, 0.95) * 100,
      })),
    }
  },
}

export const nothingRejected: Saying = {
  claim: [
    'The machine rejected nothing in 10,000 packs, so there is nothing in our packs.',
    'Nothing was thrown out of 10,000 packs, so nothing is in them.',
  ],
  check: ({ say }) => {
    const packs = 10_000
    const most = upperBound(0, packs, 0.95) * 1e6
    return {
      holds: most < 1,
      outcome: say(
        `None in ${count(packs)} still allows ${count(most)} in a million, 95 % sure, even of what the machine finds.`,
        `There may still be ${count(most)} in a million packs.`,
      ),
      because: say(
        'None in n packs leaves about 3/n. And it speaks only of pieces the machine can find: glass in the heel of a jar, or light plastic, was never looked at.',
        'The machine can only report what it can see. Light plastic, for one, it never sees. And 10,000 packs are few.',
      ),
      title: say(
        'Pieces per million packs still possible, 95 % sure',
        'Pieces in a million packs still possible',
      ),
      unit: '',
      bars: [1000, 10_000, 100_000, 1_000_000].map((n) => ({
        words: `none in ${count(n)} packs`,
        value: upperBound(0, n, 0.95) * 1e6,
      })),
    }
  },
}
