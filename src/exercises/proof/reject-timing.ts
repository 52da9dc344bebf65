import { beltTiming } from '../../checks/reject-timing.ts'
import { ANSWER, type Exercise, type Question } from '../exercise.ts'
import { count } from '../numbers.ts'
import type { Voice } from '../voice.ts'
import { falseRejectsPerDay } from './false-rejects-a-day.ts'

const PACKS_PER_MIN = 80
const SPEED = 30
const FASTER = 40
const BIN_HOLDS = 60
const CHECK_MIN = 60
const HOURS = 16
const PITCH_MM = (1000 * SPEED) / PACKS_PER_MIN
const REJECT = {
  speedMPerMin: SPEED,
  packMm: 180,
  pitchMm: PITCH_MM,
  distanceMm: 1200,
  cycleMs: 900,
  positionErrorMm: 20,
  shortestGapMm: 150,
}
const timing = beltTiming(REJECT)
const seconds = (ms: number) => Number((ms / 1000).toPrecision(2))

const facts = [
  { words: 'Belt', value: `${SPEED} m/min, ${PACKS_PER_MIN} packs a minute` },
  { words: 'Pack', value: `${REJECT.packMm} mm long` },
]

function rightPack({ say }: Voice): Question {
  const delay = timing.delayMs / 1000
  return {
    situation: say(
      `A detector sees a piece in a pack. The pusher stands ${count(REJECT.distanceMm)} mm further on along the belt.`,
      `The detector finds something. The pusher stands ${count(REJECT.distanceMm)} mm further along the belt.`,
    ),
    facts,
    ask: 'How long after the detector must the pusher strike?',
    answer: {
      kind: 'number',
      value: delay,
      unit: 's',
      within: 1.05,
      others: [delay / 4, delay / 2, delay * 2],
    },
    outcome: `${count(REJECT.distanceMm)} mm at ${SPEED} m a minute.`,
    reason: [
      say(
        'The delay is a distance turned into a time. It holds for one belt speed, and only as long as packs neither slide nor queue between the two; tracking by the travel of the belt holds for all.',
        'Far away and slow takes longer. If the belt runs faster, the time is wrong.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'Time from detector to pusher',
        unit: 's',
        bars: [20, SPEED, 50, 60].map((speed) => ({
          words: `at ${speed} m/min`,
          value: beltTiming({ ...REJECT, speedMPerMin: speed }).delayMs / 1000,
          ...(speed === SPEED ? { choice: ANSWER } : {}),
        })),
      },
    ],
  }
}

/** Which pack stands before the pusher when the belt was made faster and the delay was not. */
function nextPack({ say }: Voice): Question {
  const travelled = ((FASTER * 1000) / 60_000) * timing.delayMs
  const beyond = travelled - REJECT.distanceMm
  const packs = [0, 1, 2].map((at) => Math.abs(beyond - at * PITCH_MM))
  const struck = packs.findIndex((off) => off < REJECT.packMm / 2)
  const right = struck === 0 ? 'bad' : struck > 0 ? 'next' : 'gap'
  return {
    situation: say(
      `To catch up, the belt is set from ${SPEED} to ${FASTER} m/min; packs follow as closely as before. The delay of the pusher is left as it was, ${seconds(timing.delayMs)} s.`,
      `The belt is made faster: ${FASTER} instead of ${SPEED} m/min. Nobody changes the pusher.`,
    ),
    facts: [
      { words: 'From pack to pack', value: `${count(PITCH_MM)} mm` },
      { words: 'Pusher', value: `${count(REJECT.distanceMm)} mm from the detector` },
    ],
    ask: 'What does the pusher strike?',
    answer: {
      kind: 'choice',
      choices: [
        { id: 'bad', words: 'The pack with the piece' },
        { id: 'gap', words: 'The gap before or behind it' },
        { id: 'next', words: 'A good pack that follows it' },
      ],
      right,
    },
    outcome: `In that time the pack goes ${count(travelled)} mm: ${count(beyond)} mm past the pusher.`,
    reason: [
      say(
        'A good pack lies in the bin, the piece goes out, and the counter shows one reject. Only opening the bin tells, or a check in which the test pack must be found in it.',
        'A good pack is in the bin, the bad one goes to the shop, and the counter says one. Look into the bin.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'Middle of each pack from the pusher, when it strikes',
        unit: 'mm',
        bars: [
          { words: 'the pack with the piece', value: packs[0]!, choice: 'bad' },
          { words: 'the one that follows', value: packs[1]!, choice: 'next' },
          { words: 'the one after that', value: packs[2]! },
        ],
        line: { value: REJECT.packMm / 2, words: 'half a pack: struck within this' },
      },
    ],
  }
}

function twoInARow({ say }: Voice): Question {
  return {
    situation: say(
      'Two packs in a row hold a piece. Both are found.',
      'Two packs, one behind the other, hold a piece. Both are found.',
    ),
    facts: [
      { words: 'The pusher needs', value: `${REJECT.cycleMs} ms out and back` },
      { words: 'From pack to pack', value: `${count(PITCH_MM)} mm at ${SPEED} m/min` },
    ],
    ask: 'Which are rejected?',
    answer: {
      kind: 'choice',
      choices: [
        { id: 'both', words: 'Both' },
        { id: 'first', words: 'The first only' },
        { id: 'none', words: 'Neither' },
      ],
      right: timing.twoInARow ? 'both' : 'first',
    },
    outcome: `The next pack is there after ${count(timing.pitchMs)} ms; the pusher is ready again after ${REJECT.cycleMs} ms.`,
    reason: [
      say(
        'Pieces come in rows: a broken blade, a shattered jar. A reject that cannot take two in a row fails when it is needed most, so run two test packs in a row at the check.',
        'Pieces often come in a row, from a broken blade or a broken jar. So test two packs in a row.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'Time from pack to pack, and what the pusher needs',
        unit: 'ms',
        bars: [
          { words: 'from pack to pack', value: timing.pitchMs },
          { words: 'pusher out and back', value: REJECT.cycleMs },
        ],
      },
    ],
  }
}

function fullBin({ say }: Voice): Question {
  const perHour =
    falseRejectsPerDay({ packsPerMin: PACKS_PER_MIN, hoursPerDay: HOURS, falseRejectsPerPack: 0.001 }) / HOURS
  const hours = BIN_HOLDS / perHour
  return {
    situation: say(
      `The reject bin holds ${BIN_HOLDS} packs. One good pack in 1,000 is rejected. Nobody empties the bin.`,
      `The bin holds ${BIN_HOLDS} packs. One good pack in 1,000 is thrown out. Nobody empties the bin.`,
    ),
    facts,
    ask: 'After how many hours is it full?',
    answer: {
      kind: 'number',
      value: hours,
      unit: 'h',
      within: 1.1,
      others: [hours / 12.5, hours * 4, hours * 10],
    },
    outcome: `${perHour.toFixed(1)} packs an hour into a bin for ${BIN_HOLDS}.`,
    reason: [
      say(
        'A full bin pushes the next rejected pack back onto the belt, or jams the pusher. Hence a sensor for the full bin that stops the line, and a lock, so that emptying it is an act with a name and a count.',
        'When the bin is full, the next bad pack falls back onto the belt. So a sensor must stop the line, and the bin is locked.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'Hours until the bin is full, by false rejects',
        unit: 'h',
        bars: [0.005, 0.001, 0.0002].map((rate) => ({
          words: `1 in ${count(1 / rate)}`,
          value: (hours * 0.001) / rate,
          ...(rate === 0.001 ? { choice: ANSWER } : {}),
        })),
      },
    ],
  }
}

function airFails({ say }: Voice): Question {
  const gone = PACKS_PER_MIN * CHECK_MIN
  const withSensor = 1
  return {
    situation: say(
      `The compressed air fails just after a good check; the pusher stands still. The detector finds every piece and counts it. Checks are made every ${CHECK_MIN} minutes.`,
      `The compressed air fails just after a good check, and the pusher stands still. The detector still beeps. A check is made every ${CHECK_MIN} minutes.`,
    ),
    facts,
    ask: say('What tells of it soonest?', 'What tells you first?'),
    answer: {
      kind: 'choice',
      choices: [
        { id: 'counter', words: 'The counter of rejects on the detector' },
        { id: 'check', words: 'The next check with a test piece' },
        { id: 'confirm', words: 'A sensor in the chute that must see each rejected pack arrive' },
      ],
      right: withSensor < gone ? 'confirm' : 'check',
    },
    outcome: `The sensor stops the line at the first pack that does not arrive; until the next check ${count(gone)} packs go by.`,
    reason: [
      say(
        'The counter counts decisions, not packs in the bin. Finding and rejecting are two links, and each needs its own proof: a pressure switch for the air, a sensor for the arrival, and a stop when one of them is missing.',
        'The counter counts beeps, not packs in the bin. Finding is one thing, throwing out another. Each needs its own proof.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: 'Packs that go by before it is known',
        unit: 'packs',
        bars: [
          { words: 'sensor in the chute', value: withSensor, choice: 'confirm' },
          { words: `next check, every ${CHECK_MIN} min`, value: gone, choice: 'check' },
        ],
      },
    ],
  }
}

/** From finding to the bin: five ways in which a found pack goes out all the same. */
export const rejectTiming: Exercise = {
  id: 'reject-timing',
  title: () => 'Found, but thrown out?',
  about: ({ say }) => say('The way from the detector to the locked bin.', 'From the beep to the bin.'),
  teaches: ({ say }) =>
    say(
      'A piece found is not a pack in the bin: right pack, two in a row, room in the bin and air are each proved for themselves.',
      'Finding it is not enough. Look whether the right pack lies in the bin.',
    ),
  timed: false,
  count: 5,
  rests: 'Arithmetic of travel and time; proofs of each link: common practice, no source. Figures invented.',
  questions: (voice) => [
    rightPack(voice),
    nextPack(voice),
    twoInARow(voice),
    fullBin(voice),
    airFails(voice),
  ],
}
