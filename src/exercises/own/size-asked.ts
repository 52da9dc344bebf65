import type { Exercise, Question } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { begun, MOST_QUESTIONS, OWN_RESTS, type OwnCase } from './own-case.ts'

const CHOICES = {
  yes: ['Yes, and it can be promised', 'Yes, surely'],
  maybe: ['Expected, but not to be promised', 'Perhaps: it must be tried'],
  no: ['No, only larger ones', 'No, only bigger ones'],
  cannot: ['No, at no size', 'No, never'],
} as const

/** Does the machine that comes first find the sizes the brief must find? Null where no size is asked. */
export function sizeAsked({ advice, pieces }: OwnCase): Exercise | null {
  const asks = advice.points.flatMap(({ name, options }) => {
    const first = options.find(({ rank }) => rank === 1)
    return (first?.findings ?? []).flatMap((finding) =>
      finding.mustFindMm === null || finding.meets === 'open' ? [] : [{ name, first: first!, finding }],
    )
  })
  if (asks.length === 0) return null
  // One of each outcome: the same question is not asked twice for the same answer.
  const kinds = [...new Set(asks.map(({ finding }) => finding.meets))]
  const picked = kinds.map((kind) => asks.find(({ finding }) => finding.meets === kind)!)
  return {
    id: 'own-size-asked',
    title: () => 'Found, expected, or not at all?',
    about: () => 'The sizes you must find, and the machine that stands first.',
    teaches: ({ say }) =>
      say(
        'The difference between a size that is expected and one that can be promised.',
        'What can be promised, what must be tried.',
      ),
    timed: false,
    count: Math.min(picked.length, MOST_QUESTIONS),
    rests: OWN_RESTS,
    questions: ({ say, share }) =>
      picked.slice(0, MOST_QUESTIONS).map(({ name, first, finding }): Question => {
        const piece = pieces[finding.contaminant] ?? ''
        const chance = finding.chanceAtMustFind
        return {
          situation: say(
            `${begun(first.label)} stands first at “${name}”. You must find ${piece} of ${finding.mustFindMm} mm.`,
            `At “${name}” stands ${first.label}. You must find ${piece} of ${finding.mustFindMm} mm.`,
          ),
          facts: [],
          ask: 'Does it find that?',
          answer: {
            kind: 'choice',
            choices: Object.entries(CHOICES).map(([id, [full, plain]]) => ({ id, words: say(full, plain) })),
            right: finding.meets,
          },
          outcome:
            finding.expectedMm === null
              ? 'No size is expected to be found, and none can be promised.'
              : `Expected ${mm(finding.expectedMm)}; safe to promise: ${mm(finding.cautiousMm)}.`,
          reason: [
            say(
              `${finding.note} ${chance === null ? '' : `The chance of finding ${finding.mustFindMm} mm is ${share(chance)} as expected. `}${finding.widest === '' ? '' : `What widens the range most: ${finding.widest}.`}`.trim(),
              'Between what is expected and what can be promised lies what nobody knows for sure: how uneven the food is, what kind of piece it is, how good the machine is. Only a test on your product tells.',
            ),
          ],
          pictures: [
            {
              kind: 'bars',
              title: `Sizes of ${piece} with ${first.label}`,
              unit: 'mm',
              bars: [
                { words: 'best possible', value: finding.bestMm, none: 'none' },
                { words: 'expected', value: finding.expectedMm, none: 'none' },
                { words: 'safe to promise', value: finding.cautiousMm, none: 'nothing to promise' },
              ],
              line: { value: finding.mustFindMm!, words: `you must find ${finding.mustFindMm} mm` },
            },
          ],
        }
      }),
  }
}
