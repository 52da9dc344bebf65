import type { Exercise, Question } from './exercise.ts'
import { allMetalsAlike, ballSizeForWires, saltAndTheCoil } from './sayings/metal-detectors.ts'
import { nothingRejected, threeOfThree } from './sayings/proof.ts'
import type { Saying } from './sayings/saying.ts'
import { foilAsIfNotThere, halfSpeedHalfSize, hardBoneShows } from './sayings/x-rays.ts'

const SAYINGS: readonly Saying[] = [
  allMetalsAlike,
  halfSpeedHalfSize,
  foilAsIfNotThere,
  threeOfThree,
  nothingRejected,
  hardBoneShows,
  saltAndTheCoil,
  ballSizeForWires,
]

/** Sayings of the trade, each held against the numbers. */
export const misconceptions: Exercise = {
  id: 'misconceptions',
  title: () => 'Right or wrong?',
  about: ({ say }) =>
    say(
      'Sayings heard beside the line, each held against the numbers.',
      'What people say, and what is true.',
    ),
  teaches: ({ say }) =>
    say(
      'A saying is worth the pack it was true for: ask for the number, and for the product it was read in.',
      'Ask where a saying comes from, and try it on your own product.',
    ),
  timed: false,
  count: SAYINGS.length,
  rests: 'Both models and the exact binomial; invented packs.',
  questions: (voice) =>
    SAYINGS.map(({ claim, check }): Question => {
      const { holds, outcome, because, title, unit, bars } = check(voice)
      return {
        situation: `“${voice.say(...claim)}”`,
        facts: [],
        ask: 'Is that right?',
        answer: {
          kind: 'choice',
          choices: [
            { id: 'right', words: 'Right' },
            { id: 'wrong', words: 'Wrong' },
          ],
          right: holds ? 'right' : 'wrong',
        },
        outcome,
        reason: [because],
        pictures: [{ kind: 'bars', title, unit, bars }],
      }
    }),
}
