import type { Exercise } from '../exercise.ts'
import { howMuchSmaller } from '../how-much-smaller.ts'
import { mm, times } from '../numbers.ts'
import { withXray } from '../practice.ts'

const MACHINE = 'xray-single'
const DEPTHS_MM = [80, 60, 40, 25] as const
const SPEED_AT_DEEPEST = 10

/** Speed that carries the same, m/min. */
const speedAt = (heightMm: number) => Number(((SPEED_AT_DEEPEST * DEPTHS_MM[0]) / heightMm).toFixed(1))

/** The same kg an hour at each depth: half the depth, twice the speed. */
const beds = DEPTHS_MM.map((heightMm) => ({
  heightMm,
  speedMPerMin: speedAt(heightMm),
  seen: withXray(
    {
      product: { food: 'beans_frozen', temperatureC: -18 },
      point: {
        stage: 'loose',
        heightMm,
        widthMm: 390,
        lengthMm: 390,
        speedMPerMin: speedAt(heightMm),
      },
      contaminants: [{ material: 'quartz' }],
    },
    MACHINE,
  ),
}))

/** Depth against speed at the same throughput. */
export const thinAndFast: Exercise = {
  id: 'thin-and-fast',
  title: () => 'Thin and fast, or thick and slow',
  about: ({ say }) =>
    say(
      'The same kilograms an hour, as a deep slow bed or a thin fast one.',
      'Spread the food thin and run it fast, or leave it deep and slow?',
    ),
  teaches: ({ say }) =>
    say(
      'At the same kilograms an hour a thinner bed finds smaller stones, though each x-ray line has less time.',
      'Spread the food thin and run it faster: small stones show better.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model with practice constants; an invented bed of frozen beans.',
  questions: ({ say, share }) => {
    const [deep, , thin] = beds
    const before = deep!.seen()
    const after = thin!.seen()
    const [a, b] = [before.expectedMm[0] ?? null, after.expectedMm[0] ?? null]
    const noise = before.assessment.findings[0]!.noise
    return [
      {
        situation: say(
          `Frozen beans lie ${deep!.heightMm} mm deep on a belt at ${deep!.speedMPerMin} m/min under an x-ray machine. You may halve the depth and double the speed: the kilograms an hour stay.`,
          `Beans lie ${deep!.heightMm} mm deep on a slow belt. You may spread them half as deep and run the belt twice as fast. Just as many kilograms come through.`,
        ),
        facts: [
          { words: 'Now', value: `${deep!.heightMm} mm at ${deep!.speedMPerMin} m/min` },
          { words: 'Instead', value: `${thin!.heightMm} mm at ${thin!.speedMPerMin} m/min` },
          { words: 'Machine', value: 'x-ray from above, single energy' },
        ],
        ask: say(
          'What becomes of the smallest stone you may expect to find?',
          'What happens to the smallest stone it finds?',
        ),
        answer: howMuchSmaller(a, b),
        outcome: `From ${mm(a)} to ${mm(b)}.`,
        reason: [
          say(
            `In the deep bed ${share(noise.grain)} of what hides the stone is the pattern of the beans themselves, and ${share(noise.photon)} is too few x-rays. Speed costs x-rays; depth costs pattern. The larger part shrinks, so the trade is worth it.`,
            'In a deep heap the beans lie over each other and make a pattern of light and dark. The stone drowns in that pattern. Fewer beans on top of each other make less pattern. The faster belt gives less light, but light was not the trouble.',
          ),
          say(
            `Both effects are in the computed sizes: the pattern falls with the depth, the x-rays per line fall with the speed and rise again because less food is in the way.`,
            'Less food also lets more x-rays through, which makes up for the speed.',
          ),
          say(
            `In ${deep!.heightMm} mm of beans the stone must be ${times((a ?? 0) / (b ?? 1))} as large as in ${thin!.heightMm} mm.`,
            'So when somebody says: slow down to find more, ask first how deep the food lies.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest stone expected to be found, at the same kilograms an hour',
            unit: 'mm',
            bars: beds.map(({ heightMm, speedMPerMin, seen }) => ({
              words: `${heightMm} mm at ${speedMPerMin} m/min`,
              value: seen().expectedMm[0] ?? null,
            })),
          },
        ],
      },
    ]
  },
}
