import { ANSWER, type Exercise, type Question } from '../exercise.ts'
import { count } from '../numbers.ts'
import type { Voice } from '../voice.ts'
import { type HoldLine, packsToHold } from './hold-quantity.ts'

const LINE: HoldLine = { packsPerMin: 80, checkIntervalMin: 60, reactMin: 10 }
const INTERVALS_MIN = [15, 30, 60, 120, 240] as const
const MOST_PACKS = 4000

/** How many packs a failed check holds on one line. */
export function howManyHeld(line: HoldLine, { say }: Voice): Question {
  const held = packsToHold(line)
  const since = line.packsPerMin * line.checkIntervalMin
  const after = line.packsPerMin * line.reactMin
  return {
    situation: say(
      `A check fails. The last good one was ${line.checkIntervalMin} minutes ago, and it took ${line.reactMin} minutes until the line stood.`,
      `A check fails. The last good check was ${line.checkIntervalMin} minutes ago. It took ${line.reactMin} minutes to stop the line.`,
    ),
    facts: [
      { words: 'Line', value: `${line.packsPerMin} packs a minute` },
      { words: 'Between checks', value: `${line.checkIntervalMin} min` },
      { words: 'Time to react', value: `${line.reactMin} min` },
    ],
    ask: say('How many packs are on hold?', 'How many packs must be held back?'),
    answer: {
      kind: 'number',
      value: held,
      unit: 'packs',
      within: 1.02,
      others: [line.packsPerMin, after, since],
    },
    outcome: `${line.packsPerMin} packs a minute × (${line.checkIntervalMin} + ${line.reactMin}) minutes.`,
    reason: [
      say(
        'Everything since the last good check is in doubt, not only what came after the failed one: the machine may have gone blind a minute after the good check.',
        'Everything since the last good check is in doubt. Nobody knows when the machine went blind. Add what came through until the line stood.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'What is on hold',
        unit: 'packs',
        bars: [
          { words: 'made between the checks', value: since },
          { words: 'made until the line stood', value: after },
          { words: 'in doubt: both', value: held, choice: ANSWER },
        ],
      },
    ],
  }
}

/** How the time between checks sets what a failed check costs. */
export const holdAndInterval: Exercise = {
  id: 'hold-and-interval',
  title: () => 'How much to hold',
  about: ({ say }) =>
    say(
      'A check has failed: what is in doubt, and how long may the time between checks be?',
      'A check has failed. How much must be held back?',
    ),
  teaches: ({ say }) =>
    say(
      'The time between checks is a choice of how many packs you are ready to hold, not a rule to copy.',
      'The time between checks decides how much you must hold back.',
    ),
  timed: false,
  count: 2,
  rests: 'Arithmetic; the law asks for an adequate frequency and names none.',
  questions: (voice) => {
    const { say } = voice
    const fits = INTERVALS_MIN.filter(
      (checkIntervalMin) => packsToHold({ ...LINE, checkIntervalMin }) <= MOST_PACKS,
    )
    const longest = Math.max(...fits)
    return [
      howManyHeld(LINE, voice),
      {
        situation: say(
          `The same line. You can re-inspect ${count(MOST_PACKS)} packs in a shift, no more.`,
          `The same line. You can look through ${count(MOST_PACKS)} packs again in a shift, no more.`,
        ),
        facts: [
          { words: 'Line', value: `${LINE.packsPerMin} packs a minute` },
          { words: 'Time to react', value: `${LINE.reactMin} min` },
        ],
        ask: say(
          'What is the longest time between checks you can afford?',
          'How long may you wait between checks?',
        ),
        answer: {
          kind: 'choice',
          choices: INTERVALS_MIN.map((minutes) => ({ id: `m${minutes}`, words: `${minutes} minutes` })),
          right: `m${longest}`,
        },
        outcome: `A failed check then holds ${count(packsToHold({ ...LINE, checkIntervalMin: longest }))} packs.`,
        reason: [
          say(
            'The time to react counts in every hold; shortening it (who is called, who may stop the line) saves as many packs as checking that much oftener.',
            'Stopping sooner helps just as much as checking oftener. So make sure everybody knows who may stop the line.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Packs on hold, by time between checks',
            unit: 'packs',
            bars: INTERVALS_MIN.map((minutes) => ({
              words: `every ${minutes} min`,
              value: packsToHold({ ...LINE, checkIntervalMin: minutes }),
              choice: `m${minutes}`,
            })),
            line: { value: MOST_PACKS, words: `you can re-inspect ${count(MOST_PACKS)}` },
          },
        ],
      },
    ]
  },
}
