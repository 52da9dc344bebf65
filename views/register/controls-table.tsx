import type { Hazard, HazardControl } from '../../src/contract/register.ts'
import { sizeWords } from '../words/size.ts'
import { ByCalculation, type Ink } from './ink.tsx'
import { answerLink } from './questions.tsx'
import { classWithOwed, classWords, percentWords } from './words.ts'

const mm = (value: number | null, none: string) => (value === null ? none : `${sizeWords(value)} mm`)

/** The controls of a hazard in turn: three sizes apart, how much of what arrives each finds, its class. */
export function ControlsTable({ hazard, ink }: { hazard: Hazard; ink: Ink }) {
  const { controls, separators } = hazard
  if (controls.length + separators.length === 0) return null
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table class="questions controls-in-turn">
        <caption>Controls in turn</caption>
        <thead>
          <tr>
            <th scope="col">Control</th>
            <th scope="col">Size to find</th>
            <th scope="col">Predicted, safe to promise</th>
            <th scope="col">Demonstrated on this product</th>
            <th scope="col">Mean chance of finding what arrives</th>
            <th scope="col">Working share (0.999 until a person sets it)</th>
            <th scope="col">Class</th>
          </tr>
        </thead>
        <tbody>
          {separators.map(
            ({ label, point, takesOut: [worst, best], neverRemoves, condition, calculation }) => (
              <tr>
                <th scope="row">
                  {label}, {point}, ahead of the detector
                </th>
                <td colspan={3} class="prose">
                  separates, shows no size. {condition} {neverRemoves}
                </td>
                <td>
                  {percentWords(worst)} to {percentWords(best)}; credited with the middle
                  <ByCalculation ink={ink} id={calculation} />
                </td>
                <td colspan={2} class="prose">
                  its own inspection is a prerequisite (PRP): whole, clean, looked at
                </td>
              </tr>
            ),
          )}
          {controls.map((control) => (
            <tr>
              <th scope="row">
                {control.label}, {control.point}
              </th>
              <td>{mm(control.sizeToFindMm, '–')}</td>
              <td>{mm(control.predictedMm, 'none')}</td>
              <td>{mm(control.demonstratedMm, 'not yet')}</td>
              <td>
                {percentWords(control.meanChance)}
                {control.meanChance > 0 && control.meanChanceCautious !== null
                  ? `, at the promised sizes ${percentWords(control.meanChanceCautious)}`
                  : ''}
                <ByCalculation ink={ink} id={control.calculation} />
              </td>
              <td>{control.workingShare}</td>
              <td class="prose">
                <Class control={control} ink={ink} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

/** The class, and where a person set another one the class by the questions with the reason. */
function Class({ control, ink }: { control: HazardControl; ink: Ink }) {
  const changed = control.class !== control.proposed
  const key = control.questions[0]?.id.replace(/\.q1$/, '') ?? ''
  return (
    <>
      {classWithOwed(control.class, changed ? [] : control.owed)}
      {changed
        ? `. By the eight questions ${classWithOwed(control.proposed, control.owed)}; a person set ${classWords(control.class)}: ${control.because}`
        : ''}
      {ink.paper ? null : (
        <>
          {' '}
          <a class="why" href={answerLink(ink, `${key}.class`)}>
            set another<span class="unseen"> class for {control.label}</span>
          </a>
        </>
      )}
    </>
  )
}
