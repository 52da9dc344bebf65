import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { withXray } from '../practice.ts'
import { radiographOf } from './fillet-picture.ts'

const BONES = [
  { material: 'cartilage', words: 'Cartilage, not yet bone' },
  { material: 'bone_poultry_soft', words: 'Soft bone of a young chicken' },
  { material: 'bone_poultry', words: 'Rib or wishbone' },
  { material: 'bone_hard', words: 'Hard bone, as of cattle' },
] as const
const ASKED_MM = 2
const DRAWN_MM = [2, 3, 4]

const fillet = withXray({
  product: { food: 'chicken_breast', temperatureC: 3 },
  point: { stage: 'loose', heightMm: 25, lengthMm: 170, widthMm: 100 },
  contaminants: BONES.map(({ material }) => ({ material, mustFindMm: ASKED_MM, basis: 'customer' as const })),
})

const radiograph = radiographOf(fillet, DRAWN_MM)

/** The same bone at every age, in a fillet. */
export const boneByAge: Exercise = {
  id: 'bone-by-age',
  title: () => 'How old is the bone?',
  about: () => 'Four bones of one size in a chicken fillet.',
  teaches: ({ say }) =>
    say(
      'It is the calcium that shows: "bone" is no test piece until its age and its place in the bird are named.',
      'Young bone hardly shows. Ask which bone a machine was tested with.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model; bone as a mixture of mineral, collagen and water from the reference data.',
  questions: ({ say, share }) => {
    const { expectedMm, assessment } = fillet()
    const chances = assessment.findings.map(({ chanceAtMustFind }) => chanceAtMustFind ?? 0)
    const found = chances.filter((chance) => chance >= 0.9).length
    return [
      {
        situation: say(
          `A machine is sold as finding bone of ${ASKED_MM} mm in chicken fillets. Four pieces of ${ASKED_MM} mm are put inside the meat: ${BONES.map(({ words }) => words.toLowerCase()).join('; ')}.`,
          `A machine is said to find bone of ${ASKED_MM} mm in chicken. Four bits of that size are put into the meat.`,
        ),
        facts: [
          { words: 'Food', value: 'chicken breast, 25 mm high' },
          { words: 'Pieces', value: `${ASKED_MM} mm each` },
        ],
        ask: say(
          'How many of the four are found nine times in ten?',
          'How many of the four are found nearly always?',
        ),
        answer: {
          kind: 'choice',
          choices: [0, 1, 2, 3, 4].map((n) => ({ id: `n${n}`, words: n === 0 ? 'None' : `${n} of the 4` })),
          right: `n${found}`,
        },
        outcome: `Less often: ${BONES.flatMap(({ words }, at) => (chances[at]! < 0.9 ? [`${words.toLowerCase()} (${share(chances[at]!)})`] : [])).join('; ')}.`,
        reason: [
          say(
            'Bone stops x-rays by its calcium, and calcium comes with age and load: cartilage has next to none, a young rib little, a leg of cattle a quarter of its mass. Meat and cartilage are water to x-rays.',
            'What shows is the chalk in the bone. Young bone has little, cartilage hardly any.',
          ),
          say(
            `Smallest found: ${BONES.map(({ words }, at) => `${words.toLowerCase()} ${mm(expectedMm[at] ?? null)}`).join('; ')}. So the test piece is named with its kind, and soft bone is a matter of cutting and feeling as well.`,
            'So say which bone you mean. Soft bone must be looked for by hand as well.',
          ),
        ],
        pictures: [
          {
            kind: 'radiograph',
            title: `Bones of ${DRAWN_MM.join(', ')} mm in one fillet, left to right`,
            address: '/exercises/bone-by-age/radiograph.png',
            lines: BONES.map(({ words }) => words),
            taken: radiograph,
          },
          {
            kind: 'bars',
            title: say(
              `Pieces of ${ASKED_MM} mm found in the fillet`,
              `Pieces of ${ASKED_MM} mm found, of 100`,
            ),
            unit: say('%', ''),
            bars: BONES.map(({ words }, at) => ({ words, value: chances[at]! * 100 })),
          },
        ],
      },
    ]
  },
}
