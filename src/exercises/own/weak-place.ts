import type { Exercise, Question } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { OWN_RESTS, type OwnCase } from './own-case.ts'

const idOf = (place: string) => place.replace(/[^a-z0-9]+/gi, '-').toLowerCase()

/** Where in the pack the first machine finds least; null where no places are told apart. */
export function weakPlace({ advice, pieces }: OwnCase): Exercise | null {
  const asks = advice.points.flatMap(({ name, options }) => {
    const first = options.find(({ rank }) => rank === 1)
    const finding = first?.findings.find(
      ({ zones, expectedMm }) =>
        expectedMm !== null && new Set(zones.map(({ sizes }) => sizes.expectedMm)).size > 1,
    )
    return first && finding ? [{ name, first, finding }] : []
  })
  if (asks.length === 0) return null
  return {
    id: 'own-weak-place',
    title: () => 'The weak place of your pack',
    about: () => 'The places of your pack.',
    teaches: ({ say }) =>
      say('Where a test piece has to lie to test anything.', 'Where to put the test piece.'),
    timed: false,
    count: asks.length,
    rests: OWN_RESTS,
    questions: ({ say }) =>
      asks.map(({ name, first, finding }): Question => {
        const piece = pieces[finding.contaminant] ?? ''
        const worst = finding.zones.reduce((a, b) =>
          (b.sizes.expectedMm ?? Number.POSITIVE_INFINITY) > (a.sizes.expectedMm ?? Number.POSITIVE_INFINITY)
            ? b
            : a,
        )
        return {
          situation: say(
            `${first.label} at “${name}”, and ${piece} somewhere in the pack.`,
            `${first.label} at “${name}”. Somewhere lies ${piece}.`,
          ),
          facts: [],
          ask: say('Where is it found least?', 'Where does it hide best?'),
          answer: {
            kind: 'choice',
            choices: finding.zones.map((zone) => ({ id: idOf(zone.name), words: zone.name })),
            right: idOf(worst.name),
          },
          outcome: `${worst.sizes.expectedMm === null ? 'Nothing is found there' : `Found there: ${mm(worst.sizes.expectedMm)}`}.`,
          reason: [`${worst.why.charAt(0).toUpperCase()}${worst.why.slice(1)}.`],
          pictures: [
            {
              kind: 'bars',
              title: `Smallest size expected, by place: ${piece}`,
              unit: 'mm',
              bars: finding.zones.map((zone) => ({
                words: zone.name,
                value: zone.sizes.expectedMm,
                none: 'nothing is found',
                choice: idOf(zone.name),
              })),
            },
          ],
        }
      }),
  }
}
