import type { Hazard, HazardControl } from '../../src/contract/register.ts'
import { sizeWords } from '../words/size.ts'
import { ByCalculation, type Ink, Sentences } from './ink.tsx'
import { answerLink, Questions } from './questions.tsx'
import { classWithOwed, classWords } from './words.ts'

const mm = (value: number | null) => (value === null ? 'none' : `${sizeWords(value)} mm`)

/** One control of a hazard: three sizes, class, limit, monitoring and verification apart, questions. */
export function ControlSection({
  hazard,
  control,
  ink,
}: {
  hazard: Hazard
  control: HazardControl
  ink: Ink
}) {
  const key = control.questions[0]?.id.replace(/\.q1$/, '') ?? ''
  const changed = control.class !== control.proposed
  return (
    <section class="control">
      <h4>
        {control.label}, {control.point}
      </h4>
      <p class="class-of">
        <strong>{classWithOwed(control.class, changed ? [] : control.owed)}</strong>
      </p>
      {changed ? (
        <p>
          By the eight questions: {classWithOwed(control.proposed, control.owed)}. A person set{' '}
          {classWords(control.class)}: {control.because}
        </p>
      ) : null}
      {control.class === 'not-controlled-here' && !changed ? null : (
        <dl class="record-facts">
          <dt>Size to find</dt>
          <dd>{mm(control.sizeToFindMm)}</dd>
          <dt>Predicted, safe to promise</dt>
          <dd>{mm(control.predictedMm)}</dd>
          <dt>Demonstrated on this product</dt>
          <dd>{control.demonstratedMm === null ? 'not yet' : mm(control.demonstratedMm)}</dd>
          <dt>Mean chance of finding what arrives</dt>
          <dd>
            {Number((100 * control.meanChance).toPrecision(2))} %
            <ByCalculation ink={ink} id={control.calculation} />
          </dd>
          <dt>Working share</dt>
          <dd>{control.workingShare}, assumed unless a person set it</dd>
        </dl>
      )}
      <Sentences ink={ink} sentences={control.notes} />
      <OnceSaid hazard={hazard} control={control} ink={ink} />
      <Sentences ink={ink} sentences={control.verification} />
      <details {...(ink.paper ? { open: true } : {})}>
        <summary>The questions behind this class</summary>
        <Questions control={control} ink={ink} />
        {ink.paper ? null : (
          <p>
            <a href={answerLink(ink, `${key}.class`)}>Set another class, with a reason</a>
          </p>
        )}
      </details>
    </section>
  )
}

/** Limit and monitoring of a control, in full under the first hazard it stands against. */
function OnceSaid({ hazard, control, ink }: { hazard: Hazard; control: HazardControl; ink: Ink }) {
  const all = [...control.criticalLimit, ...control.monitoring]
  const own = all.filter(({ text }) => ink.saidFirstFor(text) === hazard.label)
  const earlier = [...new Set(all.map(({ text }) => ink.saidFirstFor(text)))].filter(
    (one) => one !== hazard.label,
  )
  return (
    <>
      <Sentences ink={ink} sentences={own} />
      {earlier.length === 0 ? null : <p>Limit and monitoring as under {earlier.join(' and ')}.</p>}
    </>
  )
}
