import type { Hazard, Sentence } from '../../src/contract/register.ts'
import { FRAGMENTS } from '../../src/register/line/trail.ts'
import { ControlsTable } from './controls-table.tsx'
import { Fold } from './fold.tsx'
import { ByCalculation, ByRule, type Ink, Numbers, Sentences } from './ink.tsx'
import { Misses } from './misses.tsx'
import { answerLink, Questions } from './questions.tsx'
import { classProposed, owedBy, percentWords } from './words.ts'

export const hazardAnchor = ({ line, contaminant }: Hazard) =>
  `hazard-${line.replace(/[^\w-]+/g, '-')}-${contaminant}`

/** A hazard of a line: where it enters, how grave, what stands against it, what is left. */
export function HazardSection({
  hazard,
  says,
  unit,
  ink,
  levelSaid,
}: {
  hazard: Hazard
  /** What is said of this hazard alone. */
  says: readonly Sentence[]
  unit: string
  ink: Ink
  /** True where the acceptable level stands once, ahead of the hazards. */
  levelSaid: boolean
}) {
  const { severity, likelihood, acceptableLevel, fragments, afterControl } = hazard
  const change = (key: string, words: string) =>
    ink.paper ? null : (
      <>
        {' '}
        <a class="why" href={answerLink(ink, `c${hazard.contaminant}.${key}`)}>
          change<span class="unseen"> {words}</span>
        </a>
      </>
    )
  const id = hazardAnchor(hazard)
  return (
    <section class="hazard" aria-labelledby={id}>
      <h3 id={id}>
        {hazard.label}
        {hazard.line === '' ? '' : `, ${hazard.line}`}
      </h3>
      <p class="class-of">
        <strong>{classProposed(hazard.class, owedBy(hazard))}</strong>
        {hazard.decisive === null ? '' : `, by ${hazard.controls[hazard.decisive]!.label}`}
      </p>
      <Sentences ink={ink} sentences={hazard.unseen} />
      <dl class="record-facts">
        <dt>Enters at</dt>
        <dd>
          {hazard.entries.length === 0
            ? 'the brief names no step; taken to enter before the first control'
            : hazard.entries
                .map(
                  ({ step, share, programme }) =>
                    `${step}${share === null ? '' : `, ${percentWords(share)}`}${programme ? ` (programme: ${programme})` : ''}`,
                )
                .join('; ')}
        </dd>
        <dt>Severity</dt>
        <dd>
          {severity.value}: {severity.words} ({severity.basis}){change('severity', 'the severity')}
        </dd>
        <dt>Likelihood</dt>
        <dd>
          {likelihood.value}: {likelihood.words} ({likelihood.from})
          {likelihood.calculation === '' ? null : <ByCalculation ink={ink} id={likelihood.calculation} />}
          {change('likelihood', 'the likelihood')}
        </dd>
        <dt>Significance</dt>
        <dd>
          {hazard.significance} before control
          {afterControl === null ? '' : `, ${afterControl.significance} after control`}
        </dd>
        {levelSaid && ink.paper ? null : (
          <>
            <dt>Acceptable level</dt>
            <dd>
              {levelSaid ? (
                'as said for every hazard'
              ) : (
                <>
                  {acceptableLevel.text}
                  {acceptableLevel.basis ? ` (${acceptableLevel.basis})` : ''}
                  <ByRule ink={ink} rule={acceptableLevel.rule} />
                </>
              )}
              {change('acceptable', 'the acceptable level')}
            </dd>
          </>
        )}
        <dt>Fragments</dt>
        <dd>
          median {Number(fragments.medianMm.toPrecision(3))} mm long, spread by a factor of{' '}
          {Number(fragments.factor.toPrecision(3))};{' '}
          {fragments.shapes
            .map(
              ({ name, share, perLength }) =>
                `${percentWords(share)} ${name}, test piece ${Number(perLength.toPrecision(2))} of the length`,
            )
            .join('; ')}{' '}
          ({fragments.confirmed === '' ? 'assumed, not confirmed' : fragments.confirmed})
          {ink.paper ? <Numbers ink={ink} sources={[FRAGMENTS]} /> : null}
          {change('median', 'the median length')}
        </dd>
      </dl>
      <Misses hazard={hazard} unit={unit} ink={ink} />
      <Sentences ink={ink} sentences={says} />
      {ink.paper ? null : <ControlsTable hazards={[hazard]} ink={ink} />}
      {hazard.controls.length === 0 || ink.paper ? null : (
        <Fold ink={ink} summary="The questions behind the classes">
          <Questions hazard={hazard} ink={ink} />
        </Fold>
      )}
    </section>
  )
}
