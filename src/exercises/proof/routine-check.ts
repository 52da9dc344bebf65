import { binomialAtMost, lowerBound, runsToDemonstrate } from '../../numerics/binomial.ts'
import type { Exercise } from '../exercise.ts'

const RUNS = [3, 5, 10, 20, 29, 45, 60] as const
const CONFIDENCE = 0.95
const CHECKS_A_DAY = 9
const PIECE_CHANCE = 0.9

/** What a routine check with a test piece shows, and what it does not. */
export const routineCheck: Exercise = {
  id: 'routine-check',
  title: () => 'Ten of ten',
  about: ({ say }) =>
    say(
      'What ten runs of a test piece tell, and how large the piece of the day should be.',
      'Ten runs, ten found. What do you know now?',
    ),
  teaches: ({ say }) =>
    say(
      'A routine check shows that the machine is on and rejects; it does not measure how well it finds.',
      'A check piece tells you the machine works. It does not tell you how well.',
    ),
  timed: false,
  count: 2,
  rests: 'Exact binomial (Clopper and Pearson 1934), runs independent and alike.',
  questions: ({ say, share }) => {
    const bound = (runs: number) => lowerBound(runs, runs, CONFIDENCE)
    const enough = runsToDemonstrate({ chance: PIECE_CHANCE, confidence: CONFIDENCE }, 0)
    const quietDay = binomialAtMost(0, CHECKS_A_DAY, 1 - PIECE_CHANCE)
    const values = [bound(3), bound(10), bound(enough), 0.99]
    const choices = values.map((value, at) => ({ id: `c${at}`, words: `${share(value)}` }))
    return [
      {
        situation: say(
          'The test piece went through ten times and was rejected ten times.',
          'The test piece went through ten times. Ten times it was thrown out.',
        ),
        facts: [{ words: 'Found', value: '10 of 10 runs' }],
        ask: say(
          'How many of such pieces does the machine find at the least? (95 % sure)',
          'Of 100 real pieces like it, how many are surely found at the least?',
        ),
        answer: { kind: 'choice', choices, right: 'c1' },
        outcome: say(
          '95 % sure, and no more than that has been shown.',
          'More may be true, but ten runs do not show it.',
        ),
        reason: [
          say(
            `A machine that finds only ${share(bound(10))} still brings ten of ten in one try in twenty. The least chance k of k demonstrates is 0.05 to the power 1/k: ${RUNS.slice(
              0,
              3,
            )
              .map((runs) => `${runs} of ${runs} shows ${share(bound(runs))}`)
              .join(', ')}; it takes ${enough} of ${enough} for 9 in 10.`,
            `A machine that misses one piece in four can still find ten in a row, with a little luck. To be sure of 9 in 10 you need ${enough} runs, all found.`,
          ),
          say(
            'So ten of ten is a good check that the machine is on, set and rejecting, and no proof of its findable size. That is proved once, at the start, with enough runs on the product.',
            'So the check is good for one thing: the machine is on and throws out. How well it finds must be shown once, properly, with many runs.',
          ),
        ],
        pictures: [
          {
            kind: 'curves',
            title: say(
              'What all found of so many runs demonstrates',
              'What is sure after so many runs, all found',
            ),
            x: { words: 'Runs, all found', unit: '' },
            y: { words: say('Found at the least', 'Surely found, of 100'), unit: say('%', '') },
            curves: [
              {
                words: say('95 % sure', 'surely found'),
                points: Array.from({ length: 60 }, (_, at) => [at + 1, bound(at + 1) * 100] as const),
                nameAt: 45,
              },
            ],
            marks: [
              { x: 10, words: '10 of 10', choice: 'c1' },
              { x: enough, words: `${enough} of ${enough}` },
            ],
          },
        ],
      },
      {
        situation: say(
          `A check piece is so small that it is found only 9 times in 10. It is run ${CHECKS_A_DAY} times a day.`,
          `A check piece is a bit too small: it is found 9 times in 10. It is run ${CHECKS_A_DAY} times a day.`,
        ),
        facts: [{ words: 'Checks a day', value: String(CHECKS_A_DAY) }],
        ask: say('On how many days is every check found?', 'Of 100 days, on how many does no check fail?'),
        answer: {
          kind: 'choice',
          choices: [PIECE_CHANCE, 0.7, quietDay, 0.1].map((value, at) => ({
            id: `c${at}`,
            words: share(value),
          })),
          right: 'c2',
        },
        outcome: say(
          `0.9 to the power ${CHECKS_A_DAY}: on all other days at least one check fails by itself.`,
          'On all other days at least one check fails, though the machine is as good as ever.',
        ),
        reason: [
          say(
            'Each failed check holds product, and people learn to run the piece again until it is found.',
            'Then product is held for nothing, and people learn to try again until it works. That is the worst lesson.',
          ),
          say(
            'So the routine piece is larger than the size shown at the start: one found practically always, and still no larger than the size you must find.',
            'So take a check piece that is found practically always, but not bigger than what must be found.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: say('Days on which every check is found', 'Of 100 days, days without a failed check'),
            unit: say('%', ''),
            bars: [0.9, 0.95, 0.99, 0.995, 0.999].map((chance) => ({
              words: `piece found ${share(chance)}`,
              value: binomialAtMost(0, CHECKS_A_DAY, 1 - chance) * 100,
              ...(chance === PIECE_CHANCE ? { choice: 'c2' } : {}),
            })),
          },
        ],
      },
    ]
  },
}
