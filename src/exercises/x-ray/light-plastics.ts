import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { nameOf, withXray } from '../practice.ts'

const PLASTICS = ['pvc', 'ptfe', 'pom', 'pet', 'pe', 'wood'] as const

const soup = withXray({
  product: { food: 'cheddar' },
  point: { heightMm: 30 },
  contaminants: PLASTICS.map((material) => ({ material })),
})

/** Which plastics x-ray finds, and which it cannot. */
export const lightPlastics: Exercise = {
  id: 'light-plastics',
  title: () => 'Light plastics',
  about: ({ say }) => say('Five plastics and wood in cheese.', 'Bits of plastic and wood in cheese.'),
  teaches: ({ say }) =>
    say(
      'X-ray finds what weakens the beam more than the food does. Chlorine and fluorine do; a plastic like fat or water does not.',
      'X-ray sees what is denser than the food. Many plastics are not.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model; attenuation from published tables, densities from the reference data.',
  questions: ({ say }) => {
    const { expectedMm, assessment } = soup()
    const sizes = PLASTICS.map((material, at) => ({
      material,
      size: expectedMm[at] ?? null,
      light: assessment.findings[at]!.looksLikeVoid,
    }))
    const best = [...sizes].sort((a, b) => (a.size ?? 99) - (b.size ?? 99))[0]!
    const lost = sizes.filter(({ size }) => size === null).map(({ material }) => nameOf(material))
    return [
      {
        situation: say(
          'Bits of five plastics and of wood, all of one size, lie in a cheese 30 mm high under an x-ray machine.',
          'Bits of plastic and wood lie in a cheese. It goes through an x-ray machine.',
        ),
        facts: [
          { words: 'Food', value: 'cheddar, 30 mm high' },
          { words: 'Machine', value: 'x-ray from above, single energy' },
        ],
        ask: say('Which of them is found at the smallest size?', 'Which one shows best?'),
        answer: {
          kind: 'choice',
          choices: sizes.map(({ material }) => ({ id: material, words: nameOf(material) })),
          right: best.material,
        },
        outcome: `Found from ${mm(best.size)} on; not at all: ${lost.join('; ')}.`,
        reason: [
          say(
            'What counts is the attenuation against the food it takes the place of. PVC carries chlorine, PTFE fluorine at a high density; polyethylene and wood are lighter than the cheese, and where they lie the picture gets brighter: a bubble looks the same.',
            'A bit of PVC is heavy for its size and casts a shadow. A bit of polyethylene is lighter than the cheese. In the picture it looks like a bubble, and bubbles are everywhere.',
          ),
          say(
            'For those no machine helps: keep them out, by the choice of materials on the line, or ask the supplier for a grade filled to be seen, and test it.',
            'No machine helps there. Keep such plastics away from the line.',
          ),
        ],
        pictures: [
          {
            kind: 'bars',
            title: 'Smallest piece expected to be found',
            unit: 'mm',
            bars: sizes.map(({ material, size, light }) => ({
              words: nameOf(material),
              value: size,
              choice: material,
              none: light ? 'looks like a bubble' : 'not found',
            })),
          },
        ],
      },
    ]
  },
}
