import type { Brief, Register } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import type { HazardNumbers } from '../hazard/hazard-numbers.ts'
import type { Answers } from './answers.ts'
import { USUAL_DAYS } from './throughput.ts'

const figure = (value: number) => String(Number(value.toPrecision(3)))

/** Assumptions behind the figures that nobody confirmed or changed, by the name an answer or confirmation uses. */
export function toConfirm(
  brief: Brief,
  numbers: readonly HazardNumbers[],
  answers: Answers,
): Register['confirm'] {
  const all = [
    { id: 'plant.days', text: 'Days of production a year', value: String(USUAL_DAYS) },
    ...numbers.flatMap(({ contaminant, sizes, controls }) => {
      if (controls.length === 0) return []
      const { material } = brief.contaminants[contaminant]!
      const name = materials.get(material)?.label ?? material
      const perLength = sizes.shapes.reduce((sum, { share, perLength: one }) => sum + share * one, 0)
      return [
        {
          id: `c${contaminant}.median`,
          text: `${name}: median longest length`,
          value: `${figure(sizes.medianMm)} mm`,
        },
        { id: `c${contaminant}.factor`, text: `${name}: spread, as a factor`, value: figure(sizes.factor) },
        {
          id: `c${contaminant}.shape`,
          text: `${name}: equivalent test piece ÷ longest length`,
          value: figure(perLength),
        },
      ]
    }),
    ...numbers.flatMap(({ controls, chances }) =>
      controls.map((control, i) => ({
        id: `p${control.pointIndex}.working-share`,
        text: `Share of the time that “${control.point}” really takes out what it sees`,
        value: String(chances[i]!.workingShare),
      })),
    ),
  ]
  return [...new Map(all.map((one) => [one.id, one])).values()].filter(
    ({ id }) => answers.confirmedBy(id) === '',
  )
}
