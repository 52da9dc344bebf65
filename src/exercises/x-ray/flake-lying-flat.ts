import type { XrayMachine } from '../../contract/index.ts'
import { buildOf } from '../../xray/beam/exposure.ts'
import { chanceAnyOrientation } from '../../xray/observer/orientation.ts'
import { PRACTICE } from '../../xray/observer/practice.ts'
import { chanceOf, objectIn, setScene } from '../../xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../xray/places/pack-in-beam.ts'
import type { Exercise } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { once } from '../once.ts'
import { machineOf, type Practice, withXray } from '../practice.ts'

const FACE_MM2 = 30
const practice: Practice = {
  product: { food: 'tomato_sauce' },
  point: { heightMm: 40, parts: [{ material: 'pp', mm: 0.5, place: 'tray' }] },
  contaminants: [{ material: 'glass_container', shape: 'flake', faceMm2: FACE_MM2 }],
}
const seen = withXray(practice)

/** Chance of finding a splinter of each thickness, flat and lying at random. */
const chances = once(() => {
  const { point, brief, assessment } = seen()
  const build = buildOf(machineOf('xray-single') as XrayMachine)
  const scene = setScene(build, point, packInBeam(point, build), assessment.setting, PRACTICE)
  const contaminant = brief.contaminants[0]!
  const object = objectIn(scene, contaminant, materialAttenuation(contaminant.material))
  const expected = assessment.findings[0]!.expectedMm!
  const thicknessMm = Array.from({ length: 25 }, (_, at) => (expected * (at + 4)) / 24)
  return {
    expected,
    thin: expected * 0.7,
    curve: thicknessMm.map((t) => ({
      t,
      flat: chanceOf(scene, object, t),
      any: chanceAnyOrientation(scene, object, contaminant, t),
    })),
    flatAt: (t: number) => chanceOf(scene, object, t),
    anyAt: (t: number) => chanceAnyOrientation(scene, object, contaminant, t),
  }
})

/** A splinter of glass, lying flat or as it falls. */
export const flakeLyingFlat: Exercise = {
  id: 'flake-lying-flat',
  title: () => 'A thin splinter',
  about: () => 'A thin splinter of glass in sauce, and how it lies.',
  teaches: ({ say }) =>
    say(
      'A flat splinter hides by lying flat to the beam; a ball of the same glass says nothing about it.',
      'A flat splinter can hide by lying flat. A ball cannot.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model; a thin disc turned at random, thin-disc approximation of our own.',
  questions: ({ say, share }) => {
    const { expected, thin, curve, flatAt, anyAt } = chances()
    const [flat, any] = [flatAt(thin), anyAt(thin)]
    const right = any > flat * 1.2 ? 'flat' : flat > any * 1.2 ? 'random' : 'same'
    return [
      {
        situation: say(
          `A splinter of jar glass, ${FACE_MM2} mm² large and ${mm(thin)} thick, lies in a tray of sauce under an x-ray machine that looks from above.`,
          `A flat splinter of glass lies in a tray of sauce. An x-ray machine looks down on it.`,
        ),
        facts: [
          { words: 'Splinter', value: `${FACE_MM2} mm², ${mm(thin)} thick` },
          { words: 'Food', value: 'tomato sauce, 40 mm deep' },
        ],
        ask: say('When is it missed more often?', 'How does it hide better?'),
        answer: {
          kind: 'choice',
          choices: [
            { id: 'flat', words: 'Lying flat on the tray' },
            { id: 'random', words: 'Lying at random, as it falls' },
            { id: 'same', words: 'It makes no difference' },
          ],
          right,
        },
        outcome: say(
          `Flat it is found ${share(flat)} of the time, lying at random ${share(any)}.`,
          `Lying flat, ${share(flat)} are found. Lying anyhow, ${share(any)}.`,
        ),
        reason: [
          say(
            'From above the beam crosses a flat splinter by its thickness alone. Tilted, it crosses more glass on a smaller spot, which shows better. A sauce lets splinters sink and settle flat, so the flat lie is the one to count on.',
            'Flat, the x-rays cross only the thin side. Tilted, they cross more glass. In a sauce splinters sink and settle flat, so count on the worst.',
          ),
          say(
            `Expected in the flat lie: ${mm(expected)} thick. Test with flat pieces lying flat, not with balls only.`,
            'So test with flat pieces too, lying flat.',
          ),
        ],
        pictures: [
          {
            kind: 'curves',
            title: `A splinter of ${FACE_MM2} mm², by thickness`,
            x: { words: 'Thickness', unit: 'mm' },
            y: { words: say('Chance of finding', 'Found of 100'), unit: say('%', '') },
            curves: [
              {
                words: 'flat',
                points: curve.map(({ t, flat: p }) => [t, p * 100] as const),
                nameAt: expected * 0.8,
              },
              {
                words: 'at random',
                points: curve.map(({ t, any: p }) => [t, p * 100] as const),
                nameAt: expected * 0.55,
              },
            ],
            marks: [{ x: thin, words: 'this one' }],
          },
        ],
      },
    ]
  },
}
