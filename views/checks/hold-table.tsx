import type { CheckPoint } from '../../src/contract/checks.ts'
import { sumsOf } from '../register/cited.ts'
import { ByCalculation, ByRule, type Ink, Sentences } from '../register/ink.tsx'
import { answerLink } from '../register/questions.tsx'

const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })
const two = (value: number) => Number(value.toPrecision(2)).toLocaleString('en-GB')

/** Intervals to choose from: what each holds, and what re-inspection and checks cost. */
export function HoldTable({ check, ink }: { check: CheckPoint; ink: Ink }) {
  const { holdTable, intervalMin, unit } = check
  const key = `p${check.pointIndex}`
  return (
    <>
      <p>
        {intervalMin === null
          ? `No time between checks is set. The pieces above are worked out for ${check.draftIntervalMin} min; choose from the table.`
          : `Chosen: ${intervalMin} min (${check.intervalFrom}). Product is released only after the next good check, the end of the run included.`}
        {ink.paper ? null : (
          <>
            {' '}
            <a class="why" href={answerLink(ink, `${key}.interval`, '/checks')}>
              choose<span class="unseen"> the time between checks at {check.point}</span>
            </a>
          </>
        )}
      </p>
      {holdTable.length === 0 ? (
        <p>Enter packs a minute or kilograms an hour to see what is held.</p>
      ) : (
        <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
          <table class="stacks">
            <caption>
              Time between checks against what is held
              <ByCalculation ink={ink} id={sumsOf(check)[0]} />
            </caption>
            <thead>
              <tr>
                <th scope="col">Minutes between checks</th>
                <th scope="col">{unit === 'packs' ? 'Packs held' : 'Held, kg'}</th>
                {unit === 'packs' ? <th scope="col">Mass held, kg</th> : null}
                <th scope="col">Hours to re-inspect</th>
                <th scope="col">Checks a day</th>
                <th scope="col">Minutes a day on checks</th>
              </tr>
            </thead>
            <tbody>
              {holdTable.map((row) => (
                <tr {...(row.intervalMin === intervalMin ? { class: 'chosen' } : {})}>
                  <th scope="row">
                    {row.intervalMin}
                    <span class="card-only"> min between checks</span>
                    {row.intervalMin === intervalMin ? ' (chosen)' : ''}
                  </th>
                  <td data-head={unit === 'packs' ? 'Packs held' : 'Held, kg'}>
                    {whole.format(row.packsHeld)}
                  </td>
                  {unit === 'packs' ? (
                    <td data-head="Mass held, kg">{row.kgHeld === null ? '–' : whole.format(row.kgHeld)}</td>
                  ) : null}
                  <td data-head="Hours to re-inspect">{two(row.hoursToReinspect)}</td>
                  <td data-head="Checks a day">{row.checksPerDay}</td>
                  <td data-head="Minutes a day on checks">{whole.format(row.minutesPerDay)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
      <p class="small">
        Assumed unless a person said otherwise:{' '}
        {check.assumed.map(({ id, label, value }, at) => (
          <>
            {at > 0 ? '; ' : ''}
            {label} {value}
            {ink.paper ? null : (
              <>
                {' '}
                <a class="why" href={answerLink(ink, id, '/checks')}>
                  change<span class="unseen"> {label}</span>
                </a>
              </>
            )}
          </>
        ))}
        .
      </p>
    </>
  )
}

/** What rejects cost a day and how seldom one holds a piece. */
export function Workload({ check, ink }: { check: CheckPoint; ink: Ink }) {
  const { workload } = check
  if (workload === null) return null
  return (
    <p>
      Good packs rejected a day: {two(workload.falsePerDay)}.{' '}
      {workload.truePerDay === null
        ? 'Packs with a piece a day: not known, no finds are logged.'
        : `Packs with a piece a day: ${two(workload.truePerDay)}, so a rejected pack holds a piece with a chance of ${(100 * (workload.chanceOfPiece ?? 0)).toPrecision(2)} %.`}{' '}
      Opening all takes {two(workload.hoursToOpenAll)} hours a day.
      <ByCalculation ink={ink} id={sumsOf(check)[1]} />
    </p>
  )
}

/** How a bad pack is taken out, and whether that can work. */
export function RejectPlan({ check, ink }: { check: CheckPoint; ink: Ink }) {
  const { reject } = check
  const ms = (value: number) => `${whole.format(value)} ms`
  return (
    <>
      <Sentences ink={ink} sentences={reject.because} />
      {reject.possible === null ? null : (
        <p>
          {reject.delayMs === null ? '' : `From the unit to the reject ${ms(reject.delayMs)} at this speed. `}
          {reject.windowMs === null
            ? ''
            : `Act for ${ms(reject.windowMs[0])} to ${ms(reject.windowMs[1])}, centred on the pack.`}
          {ink.paper ? <ByRule ink={ink} rule={reject.because.at(-1)?.rule ?? ''} /> : null}
        </p>
      )}
    </>
  )
}
