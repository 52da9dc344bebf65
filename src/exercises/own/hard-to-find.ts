import type { Exercise } from '../exercise.ts'
import { OWN_RESTS, type OwnCase } from './own-case.ts'

/** Which of the brief's contaminants no ranked machine finds at any size; null where every one is found. */
export function hardToFind({ brief, advice, pieces }: OwnCase): Exercise | null {
  const ranked = advice.points.flatMap(({ options }) => options.filter(({ rank }) => rank !== null))
  const findings = (contaminant: number) =>
    ranked.flatMap((option) => option.findings.filter((finding) => finding.contaminant === contaminant))
  const lost = brief.contaminants
    .map((_, at) => at)
    .filter((at) => ranked.length > 0 && findings(at).every(({ meets }) => meets === 'cannot'))
  const [first] = lost
  if (first === undefined || brief.contaminants.length < 2) return null
  const shown = [first, ...brief.contaminants.map((_, at) => at).filter((at) => !lost.includes(at))]
    .slice(0, 5)
    .sort((a, b) => a - b)
  const note = findings(first).find((finding) => finding.note !== '')?.note ?? ''
  return {
    id: 'own-hard-to-find',
    title: () => 'What no machine finds',
    about: () => 'One of your contaminants.',
    teaches: ({ say }) =>
      say('Some contaminants can only be kept out.', 'Some things no machine finds. They must be kept out.'),
    timed: false,
    count: 1,
    rests: OWN_RESTS,
    questions: ({ say }) => [
      {
        situation: say(
          'One of your contaminants is found by no machine compared, at no size computed.',
          'One of the things you look for is found by no machine.',
        ),
        facts: [],
        ask: 'Which one?',
        answer: {
          kind: 'choice',
          choices: shown.map((at) => ({ id: `c${at}`, words: pieces[at] ?? '' })),
          right: `c${first}`,
        },
        outcome: 'Every machine compared was asked, at every size computed.',
        reason: [
          note,
          say(
            'Keep it out before the line: the supplier, the sieve, the materials of tools and packaging.',
            'Keep it out before the line.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest size any machine is expected to find',
            unit: 'mm',
            bars: shown.map((at) => {
              const sizes = findings(at).flatMap(({ expectedMm }) =>
                expectedMm === null ? [] : [expectedMm],
              )
              return {
                words: pieces[at] ?? '',
                value: sizes.length > 0 ? Math.min(...sizes) : null,
                none: 'not found',
                choice: `c${at}`,
              }
            }),
          },
        ],
      },
    ],
  }
}
