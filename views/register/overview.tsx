import type { Register } from '../../src/contract/register.ts'
import { hazardAnchor } from './hazard-section.tsx'
import { ByCalculation, type Ink } from './ink.tsx'
import { classProposed, classWithOwed, owedBy, yearlyWords } from './words.ts'

/** Every hazard in one table: what it is, how much it counts, its class, what is left. */
export function Overview({ register, ink }: { register: Register; ink: Ink }) {
  const several = register.lines.length > 1
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table class="stacks">
        <caption>Hazards, those nothing here controls first</caption>
        <thead>
          <tr>
            {several ? <th scope="col">Line</th> : null}
            <th scope="col">Hazard</th>
            <th scope="col">Severity</th>
            <th scope="col">Likelihood</th>
            <th scope="col">Significance</th>
            <th scope="col">Control that decides</th>
            <th scope="col">Class</th>
            <th scope="col">Estimated to pass in a year, 7 mm or longer (5 to 95 %)</th>
          </tr>
        </thead>
        <tbody>
          {register.hazards.map((hazard) => {
            const decisive = hazard.decisive === null ? null : hazard.controls[hazard.decisive]!
            const owed = owedBy(hazard)
            const left = hazard.missesPerMillion.at(-1)
            return (
              <tr>
                {several ? <td data-head="Line">{hazard.line}</td> : null}
                <th scope="row">
                  <a href={`#${hazardAnchor(hazard)}`}>{hazard.label}</a>
                </th>
                <td data-head="Severity">{hazard.severity.value}</td>
                <td data-head="Likelihood">{hazard.likelihood.value}</td>
                <td data-head="Significance">{hazard.significance}</td>
                <td data-head="Control that decides">
                  {decisive ? `${decisive.label}, ${decisive.point}` : 'none'}
                </td>
                <td class="prose" data-head="Class">
                  {ink.paper ? classProposed(hazard.class, owed) : classWithOwed(hazard.class, owed)}
                </td>
                <td data-head="Estimated to pass in a year, 7 mm or longer">
                  {yearlyWords(left, hazard.incidence)}
                  {left?.piecesAYear == null ? null : <ByCalculation ink={ink} id={left.calculation} />}
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </section>
  )
}
