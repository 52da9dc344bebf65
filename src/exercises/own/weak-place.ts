import type { Finding, Zone } from '../../contract/index.ts'
import type { Exercise, Question } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { begun, OWN_RESTS, type OwnCase, TOO_CLOSE } from './own-case.ts'

const idOf = (place: string) => place.replace(/[^a-z0-9]+/gi, '-').toLowerCase()
const sizeIn = ({ sizes }: Zone) => sizes.expectedMm ?? Number.POSITIVE_INFINITY

/** The place where least is found, of those where the piece comes to rest; null where another is as bad. */
function weakestIn({ zones, expectedMm }: Finding): Zone | null {
  const [worst, next] = zones.filter(({ canLieThere }) => canLieThere).sort((a, b) => sizeIn(b) - sizeIn(a))
  if (expectedMm === null || !worst || zones.length < 2) return null
  return !next || sizeIn(next) < (1 - TOO_CLOSE) * sizeIn(worst) ? worst : null
}

/** Where in the pack the first machine finds least; null where no places are told apart. */
export function weakPlace({ advice, pieces }: OwnCase): Exercise | null {
  const asks = advice.points.flatMap(({ name, options }) => {
    const first = options.find(({ rank }) => rank === 1)
    const finding = first?.findings.find((one) => weakestIn(one) !== null)
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
        const worst = weakestIn(finding)!
        const settles = finding.zones.some(({ canLieThere }) => !canLieThere)
        const rests = settles ? 'Where it comes to rest, where' : 'Where'
        return {
          situation: say(
            `${begun(first.label)} at “${name}”, and ${piece} somewhere in the pack.`,
            `${begun(first.label)} at “${name}”. Somewhere lies ${piece}.`,
          ),
          facts: [],
          ask: say(`${rests} is it found least?`, `${rests} does it hide best?`),
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
                words: settles && zone.canLieThere ? `${zone.name}: it comes to rest here` : zone.name,
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
