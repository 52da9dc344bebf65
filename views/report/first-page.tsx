import type { Ink } from '../register/ink.tsx'
import { Overview } from '../register/overview.tsx'
import { classWithOwed } from '../register/words.ts'
import { choiceWords } from '../words/choices.ts'
import { sizeWords } from '../words/size.ts'
import type { ReportProps } from './report-page.tsx'

/** Page one: whose report, of which day, what it says in short, what nothing controls, what is owed. */
export function FirstPage({ advice, brief, date, short, ink }: ReportProps & { ink: Ink }) {
  const { register } = advice
  const said = (id: string) => register.plant.find((one) => one.id === id)?.value ?? ''
  const open = register.hazards.filter((hazard) => hazard.class === 'not-controlled-here')
  const pairs = register.hazards.flatMap(({ controls }) => controls)
  const shown = pairs.filter(({ demonstratedMm }) => demonstratedMm !== null).length
  const unreached = register.hazards.flatMap((hazard) => {
    const decisive = hazard.decisive === null ? null : hazard.controls[hazard.decisive]!
    const best = decisive === null ? null : (decisive.demonstratedMm ?? decisive.predictedMm)
    const asked = decisive?.sizeToFindMm ?? null
    if (decisive === null || asked === null || (best !== null && best <= asked)) return []
    const line = hazard.line === '' ? '' : ` (${hazard.line})`
    return [
      `${hazard.label}${line}, ${sizeWords(asked)} mm asked, ${best === null ? 'none' : `${sizeWords(best)} mm`} ${decisive.demonstratedMm === null ? 'promised' : 'shown'}`,
    ]
  })
  const proposed = register.hazards.flatMap((hazard) => {
    const decisive = hazard.decisive === null ? null : hazard.controls[hazard.decisive]!
    return decisive && decisive.owed.length > 0 ? [{ hazard, decisive }] : []
  })
  return (
    <section class="report-first" aria-labelledby="report-title">
      <h1 id="report-title">Foreign bodies: {brief.title}</h1>
      <p>
        {short ? 'Short form of the report' : 'Report'} of {date}. Issue:{' '}
        {said('plant.issue') || 'draft, no issue named'}. Market: {choiceWords('market', brief.market)}. Eaten
        by: {choiceWords('consumer', brief.consumer).toLowerCase()}
        {brief.readyToEat ? ', as it is or only heated' : ', after further preparation'}. Answers for it:{' '}
        {said('plant.author') || 'nobody named yet'}.
      </p>
      <h2>Summary</h2>
      <p>{advice.summary}</p>
      <p>
        <strong>Not controlled here: </strong>
        {open.length === 0
          ? 'nothing that was asked about.'
          : `${open.map(({ label }) => label).join('; ')}. Programmes have to hold ${open.length === 1 ? 'it' : 'them'}.`}
      </p>
      {unreached.length === 0 ? null : (
        <p>
          <strong>Asked smaller than can be promised: </strong>
          {unreached.join('; ')}.
        </p>
      )}
      <p>
        <strong>Shown by trials on this product: </strong>
        {shown} of {pairs.length} pairs of hazard and control. Every other size here is predicted; predicted
        is not demonstrated.
      </p>
      {proposed.length === 0 ? null : (
        <p>
          <strong>Owed before a class is more than proposed: </strong>
          {[
            ...new Set(
              proposed.map(({ decisive }) =>
                classWithOwed(decisive.class, decisive.owed).replace(/^.*?(?:owed|open): /, ''),
              ),
            ),
          ].join('; ')}
          .
        </p>
      )}
      <Overview register={register} ink={ink} />
      <p class="small">
        Not legal advice. Numbers in square brackets are those of the sources
        {short ? ' in the whole report' : ' at the end'}.
      </p>
    </section>
  )
}
