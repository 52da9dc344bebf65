import type { Option } from '../../contract/index.ts'
import type { Exercise, Question } from '../exercise.ts'
import { mm } from '../numbers.ts'
import type { Voice } from '../voice.ts'
import { MOST_QUESTIONS, OWN_RESTS, type OwnCase, TOO_CLOSE } from './own-case.ts'

const MOST_CHOICES = 5

interface Ask {
  readonly pointName: string
  readonly contaminant: number
  readonly options: readonly Option[]
  readonly best: Option
}

const sizeOf = (option: Option, contaminant: number) =>
  option.findings.find((finding) => finding.contaminant === contaminant)?.expectedMm ?? null

/** Pairs of point and contaminant where one machine is plainly ahead. */
function asksOf({ brief, advice }: OwnCase): Ask[] {
  return advice.points.flatMap(({ name, options }) =>
    brief.contaminants.flatMap((_, contaminant): Ask[] => {
      const shown = options.filter(({ rank }) => rank !== null).slice(0, MOST_CHOICES)
      const sized = shown
        .flatMap((option) => {
          const size = sizeOf(option, contaminant)
          return size === null ? [] : [{ option, size }]
        })
        .sort((a, b) => a.size - b.size)
      const [first, second] = sized
      if (!first || shown.length < 2) return []
      if (second && second.size - first.size < TOO_CLOSE * second.size) return []
      return [{ pointName: name, contaminant, options: shown, best: first.option }]
    }),
  )
}

function questionOf(ask: Ask, pieces: readonly string[], { say }: Voice): Question {
  const piece = pieces[ask.contaminant] ?? ''
  const finding = ask.best.findings.find(({ contaminant }) => contaminant === ask.contaminant)
  return {
    situation: say(
      `Your point “${ask.pointName}”: machines compared for ${piece}.`,
      `Your point “${ask.pointName}”. You look for ${piece}.`,
    ),
    facts: [],
    ask: say('Which is expected to find the smallest size?', 'Which machine finds the smallest one?'),
    answer: {
      kind: 'choice',
      choices: ask.options.map(({ equipment, label }) => ({ id: equipment, words: label })),
      right: ask.best.equipment,
    },
    outcome: `Expected from ${mm(sizeOf(ask.best, ask.contaminant))} on.`,
    reason: [
      say(
        `${finding?.note ?? ''} That it finds the smallest size does not make it the best choice: the size you must find is what counts.`.trim(),
        'The smallest is not always the best choice. What counts is the size you must find.',
      ),
    ],
    pictures: [
      {
        kind: 'bars',
        title: `Smallest size expected: ${piece}`,
        unit: 'mm',
        bars: ask.options.map((option) => ({
          words: option.label,
          value: sizeOf(option, ask.contaminant),
          none: 'not found',
          choice: option.equipment,
        })),
        ...(finding?.mustFindMm
          ? { line: { value: finding.mustFindMm, words: `you must find ${finding.mustFindMm} mm` } }
          : {}),
      },
    ],
  }
}

/** Which machine finds the smallest size of the brief's own pieces; null where none is plainly ahead. */
export function smallestSize(own: OwnCase): Exercise | null {
  const all = asksOf(own)
  // One for each machine that comes out ahead: the same question is not asked twice for the same answer.
  const asks = all
    .filter((ask, at) => all.findIndex(({ best }) => best.equipment === ask.best.equipment) === at)
    .slice(0, MOST_QUESTIONS)
  if (asks.length === 0) return null
  return {
    id: 'own-smallest-size',
    title: () => 'Which machine, for your product?',
    about: () => 'Your contaminants, and the machines compared.',
    teaches: ({ say }) =>
      say(
        'Which way of looking suits which of your contaminants.',
        'Which machine finds what in your product.',
      ),
    timed: false,
    count: asks.length,
    rests: OWN_RESTS,
    questions: (voice) => asks.map((ask) => questionOf(ask, own.pieces, voice)),
  }
}
