import type { Advice } from '../../src/contract/advice.ts'
import { citedSources } from '../register/cited.ts'
import { type Ink, Numbers } from '../register/ink.tsx'
import { MARK_WORDS } from '../words/mark.ts'
import type { ReportProps } from './report-page.tsx'

/** Cautions of the advice that are not law; in short those that always hold. */
export function Cautions({ advice, ink, short = false }: { advice: Advice; ink: Ink; short?: boolean }) {
  const { law, lawElsewhere } = advice.register
  const legal = new Set([...law.map(({ rule }) => rule), ...lawElsewhere])
  const others = advice.cautions.filter(({ id }) => !legal.has(id))
  const shown = short ? others.filter(({ sources }) => sources.length === 0).slice(-4) : others
  return (
    <section aria-labelledby="cautions">
      <h2 id="cautions">Cautions</h2>
      <ul>
        {shown.map(({ text, sources }) => (
          <li>
            {text}
            <Numbers ink={ink} sources={sources} />
          </li>
        ))}
      </ul>
    </section>
  )
}

/** Every source by its number, with how well it stands. */
export function Sources({ advice }: { advice: Advice }) {
  return (
    <section aria-labelledby="sources">
      <h2 id="sources">Sources</h2>
      <ol class="report-sources">
        {citedSources(advice).map(({ text, mark }) => (
          <li>
            {text} <span class="small">({MARK_WORDS[mark] ?? mark})</span>
          </li>
        ))}
      </ol>
    </section>
  )
}

/** Places to sign. */
export function Signatures() {
  return (
    <table class="signatures">
      <caption>Signatures</caption>
      <thead>
        <tr>
          <th scope="col">Role</th>
          <th scope="col">Name and competence</th>
          <th scope="col">Date</th>
          <th scope="col">Signature</th>
        </tr>
      </thead>
      <tbody>
        {['Drawn up by', 'Reviewed by', 'Released by'].map((role) => (
          <tr>
            <th scope="row">{role}</th>
            <td> </td>
            <td> </td>
            <td> </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** What made this report, so that it can be made again. */
export function VersionsAtEnd({ advice, date }: ReportProps) {
  const { gritwise, rules, reference } = advice.versions
  return (
    <p class="versions">
      gritwise {gritwise}, rule book {rules}, reference data {reference}; {date}. The same brief under the
      same versions makes the same report, byte for byte. A test on the real product decides. This report is a
      prediction, not an approval, and no substitute for a competent person, the local authority or legal
      advice.
    </p>
  )
}
