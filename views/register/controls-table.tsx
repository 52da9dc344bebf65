import type { Hazard, HazardControl } from '../../src/contract/register.ts'
import { sizeWords } from '../words/size.ts'
import { ByCalculation, type Ink } from './ink.tsx'
import { answerLink } from './questions.tsx'
import { classWithOwed, classWords, percentWords } from './words.ts'

const mm = (value: number | null, none: string) => (value === null ? none : `${sizeWords(value)} mm`)

/**
 * The controls in turn: three sizes apart, how much of what arrives each finds, its class; of one hazard, or of
 * several with their names.
 */
export function ControlsTable({ hazards, ink }: { hazards: readonly Hazard[]; ink: Ink }) {
  if (hazards.every(({ controls, separators }) => controls.length + separators.length === 0)) return null
  const isNamed = hazards.length > 1
  const share = ink.paper ? sameShare(hazards) : null
  const only = ink.paper && isNamed ? onlyControl(hazards) : null
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table class="questions controls-in-turn stacks">
        <caption>
          {ink.paper && hazards[0]!.line !== ''
            ? `Controls in turn, ${hazards[0]!.line}`
            : 'Controls in turn'}
          {only === null ? '' : `: ${only} for every hazard`}
          {share === null ? '' : `; working share of every control ${share}`}
        </caption>
        <thead>
          <tr>
            {isNamed ? <th scope="col">Hazard</th> : null}
            {only === null ? <th scope="col">Control</th> : null}
            <th scope="col">Size to find</th>
            <th scope="col">Predicted, safe to promise</th>
            <th scope="col">Demonstrated on this product</th>
            <th scope="col">Mean chance of finding what arrives</th>
            {share === null ? <th scope="col">Working share (0.999 until a person sets it)</th> : null}
            <th scope="col">Class</th>
          </tr>
        </thead>
        {hazards.map((hazard) => (
          <Rows
            hazard={hazard}
            isNamed={isNamed}
            hasControl={only === null}
            hasShare={share === null}
            ink={ink}
          />
        ))}
      </table>
    </section>
  )
}

/** The working share where all controls have the same, so that it needs no column; else null. */
function sameShare(hazards: readonly Hazard[]): number | null {
  const shares = new Set(hazards.flatMap(({ controls }) => controls.map(({ workingShare }) => workingShare)))
  const [share] = shares
  return shares.size === 1 ? share! : null
}

/** The one control that stands against every hazard, where there is no other and no device ahead of it; else null. */
function onlyControl(hazards: readonly Hazard[]): string | null {
  const names = hazards.flatMap(({ controls, separators }) => [
    ...separators.map(({ label }) => label),
    ...controls.map(({ label, point }) => `${label}, ${point}`),
  ])
  return new Set(names).size === 1 && names.length === hazards.length ? names[0]! : null
}

interface RowsProps {
  readonly hazard: Hazard
  readonly isNamed: boolean
  readonly hasControl: boolean
  readonly hasShare: boolean
  readonly ink: Ink
}

function Rows({ hazard, isNamed, hasControl, hasShare, ink }: RowsProps) {
  const { controls, separators, label } = hazard
  const first = isNamed ? (
    <th scope="rowgroup" rowspan={controls.length + separators.length}>
      {label}
    </th>
  ) : null
  return (
    <tbody>
      {separators.map(
        ({ label, point, takesOut: [worst, best], neverRemoves, condition, calculation }, at) => (
          <tr>
            {at === 0 ? first : null}
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
            <td colspan={hasShare ? 2 : 1} class="prose">
              its own inspection is a prerequisite (PRP): whole, clean, looked at
            </td>
          </tr>
        ),
      )}
      {controls.map((control, at) => (
        <tr>
          {at === 0 && separators.length === 0 ? first : null}
          {hasControl ? (
            <th scope="row">
              {control.label}, {control.point}
            </th>
          ) : null}
          <td data-head="Size to find">{mm(control.sizeToFindMm, '–')}</td>
          <td data-head="Predicted, safe to promise">{mm(control.predictedMm, 'none')}</td>
          <td data-head="Demonstrated on this product">{mm(control.demonstratedMm, 'not yet')}</td>
          <td data-head="Mean chance of finding what arrives">
            {percentWords(control.meanChance)}
            {control.meanChance === 0
              ? ''
              : control.meanChanceCautious === null
                ? ', no size promised'
                : `, at the promised sizes ${percentWords(control.meanChanceCautious)}`}
            <ByCalculation ink={ink} id={control.calculation} />
          </td>
          {hasShare ? <td data-head="Working share">{control.workingShare}</td> : null}
          <td class="prose" data-head="Class">
            <Class control={control} ink={ink} />
          </td>
        </tr>
      ))}
    </tbody>
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
