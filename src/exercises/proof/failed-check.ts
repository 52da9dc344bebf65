import { binomialAtMost } from '../../numerics/binomial.ts'
import type { Bar, Exercise, Picture, Question } from '../exercise.ts'
import { count } from '../numbers.ts'
import type { Voice } from '../voice.ts'
import { type HoldLine, packsToHold } from './hold-quantity.ts'

const LINE: HoldLine = { packsPerMin: 80, checkIntervalMin: 60, reactMin: 5 }

const choices = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([id, text]) => ({ id, words: text }))

const bars = (title: string, unit: string, drawn: readonly Bar[]): Picture => ({
  kind: 'bars',
  title,
  unit,
  bars: drawn,
})

/** Minutes that go by while somebody thinks. */
const THOUGHT_MIN = [1, 2, 5, 10]
/** Chances of finding, and runs, that are held beside each other. */
const FINDS = [0.5, 0.7, 0.9, 0.99]
const RUNS = [1, 2, 5, 10]
const OFTEN_FOUND = 0.9
/** Three pieces at three places, as common practice has it. */
const FULL_CHECK = 9

/** What somebody who reads the record in a year wants to know of it. */
const ASKED_IN_A_YEAR = [
  'when the check failed',
  'which piece, and where',
  'which packs were held',
  'the cause',
  'the repair',
  'the proof after it',
  'what became of the rejects',
  'who released, and when',
] as const
type AskedInAYear = (typeof ASKED_IN_A_YEAR)[number]

/** Records as they are written, and what each tells of it. */
const RECORDS: readonly {
  readonly id: string
  readonly words: string
  readonly short: string
  readonly answers: readonly AskedInAYear[]
}[] = [
  {
    id: 'short',
    words: 'Machine repaired, line running, 14:20',
    short: 'repaired, running',
    answers: ['the repair'],
  },
  {
    id: 'whole',
    words:
      'Times, piece and place, packs held by code, cause, repair, what was run after it, what became of the rejects, who released',
    short: 'times to release',
    answers: ASKED_IN_A_YEAR,
  },
  { id: 'hold', words: 'Packs held and released', short: 'held and released', answers: [] },
]

function stepsOf(line: HoldLine, { say, share }: Voice): Question[] {
  const held = packsToHold(line)
  const since = line.packsPerMin * line.checkIntervalMin
  const after = line.packsPerMin * line.reactMin
  const lucky = 1 - binomialAtMost(1, 3, 0.5)
  const pace = { words: 'Line', value: `${line.packsPerMin} packs a minute` }
  const whole = RECORDS.reduce((a, b) => (b.answers.length > a.answers.length ? b : a))
  const shortest = RECORDS.reduce((a, b) => (b.answers.length < a.answers.length ? b : a))
  const question = (
    part: Pick<Question, 'situation' | 'ask' | 'outcome' | 'reason' | 'pictures'> & {
      readonly facts?: Question['facts']
      readonly choices: Readonly<Record<string, string>>
      readonly right: string
    },
  ): Question => ({
    situation: part.situation,
    facts: part.facts ?? [],
    ask: part.ask,
    answer: { kind: 'choice', choices: choices(part.choices), right: part.right },
    outcome: part.outcome,
    reason: part.reason,
    pictures: part.pictures,
  })
  return [
    question({
      situation: 'The test piece has just gone through the detector in a pack. It was not rejected.',
      facts: [pace, { words: 'Last good check', value: `${line.checkIntervalMin} min ago` }],
      ask: 'What first?',
      choices: {
        again: 'Run the piece again',
        stop: 'Stop the line',
        call: 'Call maintenance and let the line run on',
        note: 'Note it and wait for the next check',
      },
      right: 'stop',
      outcome: `Every minute is ${count(line.packsPerMin)} packs more on hold.`,
      reason: [
        say(
          'The check has failed, and the product now running is not controlled. Running the piece again comes later, and its result changes nothing about the first.',
          'The check has failed. What runs now is not looked at by a machine you can trust.',
        ),
      ],
      pictures: [
        bars(
          'Packs made while the line runs on',
          'packs',
          THOUGHT_MIN.map((min) => ({ words: `${min} min`, value: min * line.packsPerMin })),
        ),
      ],
    }),
    question({
      situation: `${line.reactMin} minutes after the failed check the belt is empty.`,
      facts: [
        pace,
        { words: 'Last good check', value: `${line.checkIntervalMin} min before the failed one` },
        { words: 'Belt empty', value: `${line.reactMin} min after it` },
      ],
      ask: 'How many packs are on hold?',
      choices: {
        none: 'None: the piece may have lain badly',
        after: `${count(after)}: what came after the failed check`,
        since: `${count(since)}: what was made between the checks`,
        all: `${count(held)}: everything since the last good check, until the belt was empty`,
      },
      right: 'all',
      outcome: `${line.packsPerMin} packs a minute × (${line.checkIntervalMin} + ${line.reactMin}) minutes.`,
      reason: [
        say(
          'The detector may have failed at any time since it was last seen to work.',
          'Nobody knows when it went blind. So everything since the last good check is held.',
        ),
      ],
      pictures: [
        bars('Packs in doubt', 'packs', [
          { words: 'none', value: 0, choice: 'none' },
          { words: 'after the failed check', value: after, choice: 'after' },
          { words: 'between the checks', value: since, choice: 'since' },
          { words: 'since the last good check, until the belt was empty', value: held, choice: 'all' },
        ]),
      ],
    }),
    question({
      situation: 'Now the piece is run three times more. It is found twice and missed once.',
      ask: 'What does that say?',
      choices: {
        fine: 'The machine is good again: go on',
        lay: 'The piece lay badly the first time',
        bad: 'Nothing good: it may find only every second piece',
      },
      right: lucky > 0.05 ? 'bad' : 'fine',
      outcome: say(
        `A detector that finds half the pieces finds two or more of three with a chance of ${share(lucky)}.`,
        `A machine that finds only every second piece still finds two of three in ${share(lucky)} tries.`,
      ),
      reason: [
        say(
          'A few good runs after a bad one show next to nothing. Find the cause first.',
          'Two good runs prove nothing. Find out what is wrong.',
        ),
      ],
      pictures: [
        bars(
          'Two or three of three runs are found, times in 100',
          '',
          FINDS.map((chance) => ({
            words: `piece found ${100 * chance} times in 100`,
            value: 100 * (1 - binomialAtMost(1, 3, chance)),
          })),
        ),
      ],
    }),
    question({
      situation: 'Maintenance has had the machine open and closed it again. The packs on hold are waiting.',
      ask: 'What must come before they are inspected again?',
      choices: {
        nothing: 'Nothing: it has been seen to',
        proof: 'All test pieces, in the product, each place, each rejected and counted back',
        one: 'The piece that failed, once',
      },
      right: 'proof',
      outcome: say(
        `A machine that finds every second piece passes one run in ${share(0.5)} of tries, ${FULL_CHECK} runs in ${share(0.5 ** FULL_CHECK)}.`,
        `A machine that finds only every second piece passes one run in ${share(0.5)} tries, and ${FULL_CHECK} runs in ${share(0.5 ** FULL_CHECK)}.`,
      ),
      reason: [
        say(
          'A repair changes the machine. It is proved again with every piece, material and place of the check, the reject included; only a proved machine may judge the packs on hold.',
          'A repaired machine must show again that it finds every test piece and throws it out. Only then may it judge the packs.',
        ),
      ],
      pictures: [
        bars('A machine that finds every second piece still passes, times in 100', '', [
          { words: 'nothing is run', value: 100, choice: 'nothing' },
          { words: 'one piece, once', value: 100 * 0.5, choice: 'one' },
          {
            words: `${FULL_CHECK} runs, each piece at each place`,
            value: 100 * 0.5 ** FULL_CHECK,
            choice: 'proof',
          },
        ]),
      ],
    }),
    question({
      situation: 'The packs on hold are inspected again. One is rejected.',
      ask: 'And that one?',
      choices: {
        again: 'Run it again; if it goes through, it is good',
        open: 'Set it aside, locked; a named person opens it, finds the cause, writes it down',
        bin: 'Throw it away unopened',
      },
      right: 'open',
      outcome: `A piece found ${100 * OFTEN_FOUND} times in 100 goes through at least once in ten runs ${Math.round(100 * (1 - OFTEN_FOUND ** 10))} times in 100.`,
      reason: [
        say(
          'A piece found there tells what was missed, and where it comes from. Run again until it goes through, a pack with a piece will go through in the end.',
          'If you run a pack often enough, it will go through in the end, piece and all.',
        ),
      ],
      pictures: [
        bars(
          `A piece that is found ${100 * OFTEN_FOUND} times in 100 goes through at least once, times in 100`,
          '',
          RUNS.map((runs) => ({
            words: runs === 1 ? 'run once' : `run ${runs} times`,
            value: 100 * (1 - OFTEN_FOUND ** runs),
          })),
        ),
      ],
    }),
    question({
      situation: 'The shift leader asks what is to be written down.',
      ask: 'Which record is whole?',
      choices: Object.fromEntries(RECORDS.map(({ id, words }) => [id, words])),
      right: whole.id,
      outcome: `It answers ${whole.answers.length} of the ${ASKED_IN_A_YEAR.length} questions somebody asks in a year; “${shortest.words}” answers ${count(shortest.answers.length)}.`,
      reason: [
        say(
          `Who reads it in a year must see, without asking anybody, that nothing doubtful was sold: ${ASKED_IN_A_YEAR.join('; ')}.`,
          'Somebody who reads it next year must see that nothing doubtful was sold.',
        ),
      ],
      pictures: [
        bars(
          `Of ${ASKED_IN_A_YEAR.length} questions asked in a year, answered by the record`,
          '',
          RECORDS.map(({ id, short, answers }) => ({ words: short, value: answers.length, choice: id })),
        ),
      ],
    }),
  ]
}

/** The drill of a failed check on one line, against the clock. */
export const failedCheckOn = (line: HoldLine, id = 'failed-check'): Exercise => ({
  id,
  title: () => 'The check has failed',
  about: ({ say }) =>
    say('The test piece was not rejected. What now?', 'The test piece was not thrown out. What now?'),
  teaches: ({ say }) =>
    say(
      'Stop, hold, find the cause, prove, re-inspect, record: in this order, and quickly.',
      'What to do when the test piece is not thrown out. In the right order, and fast.',
    ),
  timed: true,
  count: 6,
  rests: 'Order of steps: common practice, no source. Packs on hold and chances: computed.',
  questions: (voice) => stepsOf(line, voice),
})

export const failedCheck = failedCheckOn(LINE)

/** The pace of the practice line, for what goes by while somebody thinks. */
export const DRILL_LINE = LINE
