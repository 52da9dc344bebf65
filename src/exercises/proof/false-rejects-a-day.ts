import { ANSWER, type Exercise, type Question } from '../exercise.ts'
import { count, oneIn } from '../numbers.ts'
import type { Voice } from '../voice.ts'

export interface RejectLine {
  readonly packsPerMin: number
  readonly hoursPerDay: number
  readonly falseRejectsPerPack: number
}

const RATES = [0.01, 0.005, 0.001, 0.0005, 0.0001] as const

/** Good packs rejected a day. */
export const falseRejectsPerDay = ({ packsPerMin, hoursPerDay, falseRejectsPerPack }: RejectLine): number =>
  packsPerMin * 60 * hoursPerDay * falseRejectsPerPack

/** What a share of false rejects means in packs a day on one line. */
export function rejectsADay(line: RejectLine, { say }: Voice): Question {
  const perDay = falseRejectsPerDay(line)
  return {
    situation: say(
      `A line runs ${line.packsPerMin} packs a minute, ${line.hoursPerDay} hours a day. One good pack in ${oneIn(line.falseRejectsPerPack).slice(5)} is rejected though nothing is in it.`,
      `A line makes ${line.packsPerMin} packs a minute for ${line.hoursPerDay} hours a day. One good pack in ${oneIn(line.falseRejectsPerPack).slice(5)} is thrown out by mistake.`,
    ),
    facts: [{ words: 'False rejects', value: oneIn(line.falseRejectsPerPack) }],
    ask: 'How many good packs lie in the reject bin at the end of the day?',
    answer: {
      kind: 'number',
      value: perDay,
      unit: 'packs',
      within: 1.1,
      others: [perDay / 60, perDay / 10, perDay * 10],
    },
    outcome: say(
      `${line.packsPerMin} × 60 × ${line.hoursPerDay} packs, one in ${oneIn(line.falseRejectsPerPack).slice(5)} of them.`,
      `${count(line.packsPerMin * 60 * line.hoursPerDay)} packs a day, one in ${oneIn(line.falseRejectsPerPack).slice(5)} of them.`,
    ),
    reason: [
      say(
        'A small share of a large number is a full bin; and a bin full of good packs is a bin nobody looks into.',
        'A small share of very many packs is still a full bin. And when the bin is full of good packs, nobody looks into it any more.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'Good packs rejected a day on this line',
        unit: 'packs',
        bars: RATES.map((falseRejectsPerPack) => ({
          words: oneIn(falseRejectsPerPack),
          value: falseRejectsPerDay({ ...line, falseRejectsPerPack }),
          ...(falseRejectsPerPack === line.falseRejectsPerPack ? { choice: ANSWER } : {}),
        })),
      },
    ],
  }
}

export const falseRejectsADay: Exercise = {
  id: 'false-rejects-a-day',
  title: () => 'One in a thousand',
  about: ({ say }) =>
    say('A false-reject rate, and what it fills.', 'One in a thousand sounds little. Is it?'),
  teaches: ({ say }) =>
    say(
      'A share of false rejects becomes real as packs a day.',
      'One in a thousand sounds little. Count the packs.',
    ),
  timed: false,
  count: 1,
  rests: 'Arithmetic.',
  questions: (voice) => [
    rejectsADay({ packsPerMin: 80, hoursPerDay: 24, falseRejectsPerPack: 0.001 }, voice),
  ],
}
