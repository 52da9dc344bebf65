import type { Register, Sentence } from '../../src/contract/register.ts'
import { type Ink, Sentences } from './ink.tsx'

/** Limit, monitoring and verification of every machine, apart and each said once; then what its classes still owe. */
export function Limits({ register, ink }: { register: Register; ink: Ink }) {
  const machines = register.lines.flatMap(({ name, controls }) =>
    controls.map((control) => ({ line: name, ...control })),
  )
  const pairs = register.hazards.flatMap(({ line, label, controls }) =>
    controls.map((control) => ({ line, hazard: label, control })),
  )
  const said = machines
    .map((machine) => {
      const mine = pairs.filter(
        ({ line, control }) =>
          line === machine.line && control.point === machine.point && control.equipment === machine.equipment,
      )
      const sentences = once(
        (['criticalLimit', 'monitoring', 'verification', 'notes'] as const).flatMap((part) =>
          mine.flatMap(({ control }) => control[part]),
        ),
      )
      return { machine, sentences }
    })
    .filter(({ sentences }) => sentences.length > 0)
  if (said.length === 0) return null
  return (
    <section aria-labelledby="limits">
      <h2 id="limits">Limit, monitoring, verification</h2>
      {said.map(({ machine, sentences }) => (
        <section>
          <h3>
            {machine.label}, {machine.point}
            {machine.line === '' ? '' : `, ${machine.line}`}
          </h3>
          <Sentences ink={ink} sentences={sentences} />
        </section>
      ))}
    </section>
  )
}

const once = (sentences: readonly Sentence[]): Sentence[] => [
  ...new Map(sentences.map((one) => [one.text, one])).values(),
]
