import type { Exercise } from '../exercise.ts'
import { howMuchSmaller } from '../how-much-smaller.ts'
import { mm } from '../numbers.ts'
import { type Practice, withXray } from '../practice.ts'

const stones = [{ material: 'quartz' }]
const even: Practice = { product: { food: 'cheddar' }, point: { heightMm: 30 }, contaminants: stones }
const grains: Practice = {
  product: { food: 'hazelnut' },
  point: { heightMm: 60, stage: 'loose' },
  contaminants: stones,
}

interface Case {
  readonly id: string
  readonly practice: Practice
  readonly title: string
  readonly about: string
  readonly teaches: readonly [string, string]
  readonly situation: readonly [string, string]
}

/** One energy against two in one food; the two exercises differ only in the food. */
function exerciseOn({ id, practice, title, about, teaches, situation }: Case): Exercise {
  const single = withXray(practice, 'xray-single')
  const dual = withXray(practice, 'xray-dual')
  return {
    id,
    title: () => title,
    about: () => about,
    teaches: ({ say }) => say(...teaches),
    timed: false,
    count: 1,
    rests: 'X-ray model with practice constants; the two archetypes, the dual one with more tube power.',
    questions: ({ say, share }) => {
      const [one, two] = [single(), dual()]
      const [a, b] = [one.expectedMm[0] ?? null, two.expectedMm[0] ?? null]
      const pattern = one.assessment.findings[0]!.noise.grain
      const left = two.assessment.findings[0]!.noise.grain
      const because =
        pattern > 0.5
          ? say(
              `With one energy ${share(pattern)} of what hides the stone is the pattern of the grains. Stone and food weaken soft and hard x-rays in different proportion, so two energies weighed against each other take most of the pattern away and leave the stone; ${share(left)} of the noise that is left is still pattern.`,
              'The grains make a pattern, and the stone drowns in it. A machine with two energies sees food and stone in two colours, as it were. It can take the food out of the picture. The stone stays.',
            )
          : say(
              `Here ${pattern < 0.01 ? 'nothing' : `only ${share(pattern)}`} of what hides the stone is a grain pattern: there is next to nothing for the second energy to take away. What limits both is the number of x-rays, and the second layer can only share them.`,
              'Even food makes no pattern. There is nothing to take out of the picture. What counts is light, and both machines have nearly the same.',
            )
      return [
        {
          situation: say(...situation),
          facts: [
            { words: 'Height of the food', value: `${one.point.heightMm} mm` },
            { words: 'Speed', value: `${one.point.speedMPerMin} m/min` },
          ],
          ask: say(
            'Dual energy instead of single: what becomes of the smallest stone you may expect to find?',
            'The dearer machine looks with two energies. What happens to the smallest stone it finds?',
          ),
          answer: howMuchSmaller(a, b),
          outcome: `From ${mm(a)} with one energy to ${mm(b)} with two.`,
          reason: [
            because,
            say(
              'So the question before paying for a second energy is not "which is better" but "what hides the piece in my food: the pattern, or too few x-rays".',
              'So ask first: is my food even, or is it a heap of grains?',
            ),
          ],
          pictures: [
            {
              kind: 'bars',
              title: 'Smallest stone expected to be found',
              unit: 'mm',
              bars: [
                { words: 'single energy', value: a },
                { words: 'dual energy', value: b },
              ],
            },
          ],
        },
      ]
    },
  }
}

export const dualInEvenFood = exerciseOn({
  id: 'dual-even-food',
  practice: even,
  title: 'Dual energy in an even food',
  about: 'A smooth cheese, one energy or two.',
  teaches: [
    'Where the food makes no pattern, a second energy has little to take away.',
    'In smooth food the dearer machine brings little.',
  ],
  situation: [
    'A cheese of even height passes an x-ray machine. The salesman offers the dual-energy model, one step dearer.',
    'A smooth cheese goes through an x-ray machine. You are offered a dearer one.',
  ],
})

export const dualInDeepGrains = exerciseOn({
  id: 'dual-deep-grains',
  practice: grains,
  title: 'Dual energy in deep grains',
  about: 'A deep heap of nuts, one energy or two.',
  teaches: [
    'In a deep bed of grains the pattern hides the stone, and two energies take the pattern away.',
    'In a deep heap of nuts the dearer machine is worth its money.',
  ],
  situation: [
    'Hazelnut kernels lie four or five deep on a belt under an x-ray machine. The salesman offers the dual-energy model, one step dearer.',
    'Nuts lie in a deep heap on the belt. You are offered a dearer x-ray machine.',
  ],
})
