import type { XrayMachine } from '../../contract/index.ts'
import { buildOf } from '../../xray/beam/exposure.ts'
import { packInBeam } from '../../xray/places/pack-in-beam.ts'
import { overVoltages } from '../../xray/sizes-over-voltages.ts'
import type { Exercise } from '../exercise.ts'
import { howMuchLarger } from '../how-much-smaller.ts'
import { mm } from '../numbers.ts'
import { once } from '../once.ts'
import { briefOf, machineOf } from '../practice.ts'

const TOP_KV = 140

/** A chicken fillet with soft bone, over all voltages of a machine with a strong tube. */
const voltages = once(() => {
  const [point] = FILLET.points
  const machine = { ...(machineOf('xray-single') as XrayMachine), kVRange: [40, TOP_KV] as [number, number] }
  const build = buildOf(machine)
  return overVoltages(machine, build, point!, packInBeam(point!, build), FILLET.contaminants)
})
const FILLET = briefOf({
  product: { food: 'chicken_breast', temperatureC: 3 },
  point: { heightMm: 25 },
  contaminants: [{ material: 'bone_poultry_soft' }],
})

/** More voltage makes a brighter picture, and hides what is only a little heavier than the food. */
export const voltageTooHigh: Exercise = {
  id: 'voltage-too-high',
  title: () => 'A brighter picture',
  about: ({ say }) =>
    say(
      'The tube voltage is turned up: the picture gets brighter.',
      'Somebody makes the x-ray picture brighter.',
    ),
  teaches: ({ say }) =>
    say(
      'Hard x-rays go through food and bone alike; the voltage is high enough when the beam comes through, and too high beyond.',
      'A brighter picture is not a better one.',
    ),
  timed: false,
  count: 1,
  rests: 'X-ray model with practice constants; the tube gives what its power allows at each voltage.',
  questions: ({ say }) => {
    const { steps, chosen } = voltages()
    const last = steps.at(-1)!
    const [a, b] = [chosen.expectedMm[0] ?? null, last.expectedMm[0] ?? null]
    const sized = steps.flatMap(({ setting, expectedMm }) =>
      expectedMm[0] === null || expectedMm[0] === undefined ? [] : [[setting.kV, expectedMm[0]] as const],
    )
    return [
      {
        situation: say(
          `Chicken fillets, 25 mm high, are looked at for soft bone at ${chosen.setting.kV} kV. To brighten the picture somebody sets ${last.setting.kV} kV.`,
          `Chicken fillets go through an x-ray machine that looks for soft bone. The picture is dark, so somebody turns the voltage from ${chosen.setting.kV} to ${last.setting.kV}.`,
        ),
        facts: [
          { words: 'Food', value: 'chicken breast, 25 mm high' },
          { words: 'Piece', value: 'soft poultry bone' },
        ],
        ask: say(
          'What becomes of the smallest bone you may expect to find?',
          'What happens to the smallest bone it finds?',
        ),
        answer: howMuchLarger(a, b),
        outcome: `From ${mm(a)} to ${mm(b)}.`,
        reason: [
          say(
            'Bone shows because its calcium stops soft x-rays far better than meat does. Harder x-rays pass both more evenly: there are more of them, but the difference they bring shrinks faster than the noise.',
            'Soft x-rays are stopped by the chalk in the bone. Hard x-rays go through meat and bone alike, so the bone grows pale.',
          ),
          say(
            'A thick or dense pack is another matter: there the soft x-rays do not come through at all. The right voltage belongs to the pack, so it is written down with the recipe and not turned by eye.',
            'A thick pack needs more voltage, a thin one less. The right value is written down for each product.',
          ),
        ],
        pictures: [
          {
            kind: 'curves',
            title: 'Smallest soft bone expected to be found, by tube voltage',
            x: { words: 'Tube voltage', unit: 'kV' },
            y: { words: 'Smallest bone', unit: 'mm' },
            curves: [{ words: 'soft poultry bone', points: sized, nameAt: 100 }],
            marks: [
              { x: chosen.setting.kV, words: 'before' },
              { x: last.setting.kV, words: 'after' },
            ],
          },
        ],
      },
    ]
  },
}
