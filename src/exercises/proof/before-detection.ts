import { assessRemoval } from '../../separation/assess-removal.ts'
import type { RemovalMachine } from '../../separation/assessment.ts'
import type { Exercise } from '../exercise.ts'
import { once } from '../once.ts'
import { briefOf, machineOf, type Practice, withXray } from '../practice.ts'

const PIECE_MM = 8
const nuts: Practice = {
  product: { food: 'hazelnut' },
  point: { heightMm: 45, stage: 'loose', widthMm: 390, lengthMm: 390, kgPerHour: 3000 },
  contaminants: [{ material: 'wood', mustFindMm: PIECE_MM, basis: 'customer' }],
}
const single = withXray(nuts, 'xray-single')
const dual = withXray(nuts, 'xray-dual')

/** At least, and at best, so much of the wood is taken out by each step. */
const steps = once(() => {
  const brief = briefOf(nuts)
  const removed = (id: string) =>
    assessRemoval({
      machine: machineOf(id) as RemovalMachine,
      point: brief.points[0]!,
      contaminants: brief.contaminants,
      prefix: 'exercise',
    }).findings[0]!.shareRemoved
  const found = (seen: typeof single): readonly [number, number] => {
    const chance = seen().assessment.findings[0]!.chanceAtMustFind ?? 0
    return [chance, chance]
  }
  return [
    { id: 'single', words: 'X-ray, single energy', share: found(single) },
    { id: 'dual', words: 'X-ray, dual energy, dearer', share: found(dual) },
    { id: 'sieve', words: 'A sieve the nuts fall through', share: removed('sieve') },
    { id: 'air', words: 'A stream of air that lifts what is light', share: removed('density-separator') },
  ]
})

/** What no detector finds is kept out, or taken out, before it. */
export const beforeDetection: Exercise = {
  id: 'before-detection',
  title: () => 'Before the detector',
  about: () => 'Bits of wood among nuts, and four machines to spend money on.',
  teaches: ({ say }) =>
    say(
      'Detection comes last: keep it out, then take it out by what makes it different, and only then look for what is left.',
      'First keep it out. Then take it out. Only then look for it.',
    ),
  timed: false,
  count: 1,
  rests:
    'X-ray model; shares removed from the models of sieve and air separator, as ranges from worst to best.',
  questions: ({ say, share }) => {
    const all = steps()
    const best = all.reduce((a, b) => (b.share[0] > a.share[0] ? b : a))
    const others = new Set(all.filter((one) => one !== best).map((one) => share(one.share[0])))
    const range = ([low, high]: readonly number[]) =>
      low === high ? share(low!) : `${share(low!)} to ${share(high!)}`
    return [
      {
        situation: say(
          `Chips of wood from pallets, ${PIECE_MM} mm across, come with hazelnut kernels. There is money for one machine.`,
          `Chips of wood, ${PIECE_MM} mm big, come with the nuts. There is money for one machine.`,
        ),
        facts: [
          { words: 'Food', value: 'hazelnut kernels, loose, graded' },
          { words: 'Piece', value: `wood, ${PIECE_MM} mm` },
        ],
        ask: say('Which takes out most of the wood?', 'Which one gets most of the wood out?'),
        answer: {
          kind: 'choice',
          choices: all.map(({ id, words }) => ({ id, words })),
          right: best.id,
        },
        outcome: say(
          `Taken out: ${range(best.share)}; the others surely: ${[...others].join(', ')}${others.size === 1 ? ' each' : ''}.`,
          `It takes out ${range(best.share)} chips; each of the others surely: ${[...others].join(', ')}.`,
        ),
        reason: [
          say(
            'Wood is lighter than nuts and lets x-rays through: to the machine it is a gap between kernels. Through the sieve it falls with the nuts, for it is smaller. But it is light, and air lifts it where nuts stay.',
            'To x-rays wood looks like nothing. Through the sieve it falls with the nuts. But air lifts it, because it is light.',
          ),
          say(
            'Better still, no wood: pallets changed before the room, supplier and intake looked at. What is never in the food need not be found.',
            'Best of all: no wooden pallets where food lies open.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: say('Wood surely taken out', 'Of 100 chips, surely taken out'),
            unit: say('%', ''),
            bars: all.map(({ id, words, share: [low] }) => ({ words, value: low * 100, choice: id })),
          },
        ],
      },
    ]
  },
}
