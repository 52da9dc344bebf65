import type { Contrast } from '../../src/contract/reasoning.ts'
import { ruleLink } from '../advice/links.ts'
import { WhyLinks } from '../advice/reasons/why-links.tsx'
import { Page } from '../page.tsx'
import { VERDICT_WORDS } from '../words/verdict.ts'
import { outcomeWords, ruleLines, sideWords } from './contrast-words.ts'

export interface RatherPageProps {
  readonly contrast: Contrast
  /** Machines of the point to choose from. */
  readonly machines: readonly { readonly equipment: string; readonly label: string }[]
  readonly point: number
  readonly pointName: string
  /** The contaminants of the brief in words. */
  readonly pieces: readonly string[]
  readonly packed: string
  readonly print: boolean
}

/** Two machines of one point side by side: what puts one before the other, and only what differs. */
export function RatherPage(props: RatherPageProps) {
  const { contrast, machines, pointName, pieces, packed, print } = props
  const label = (id: string) => machines.find((one) => one.equipment === id)?.label ?? id
  const [a, b] = [label(contrast.first), label(contrast.second)]
  const rules = ruleLines(contrast.rules)
  return (
    <Page title={`Compare two machines: ${a}, ${b}`} packed={packed} here="other" print={print}>
      <p class="over-title">
        <a href={`/advice?b=${packed}#rather`}>Advice</a>
      </p>
      <h1>
        Compare two machines: {a}, {b}
      </h1>
      <p class="standfirst">
        {`${pointName}: ${contrast.because}`}
        <WhyLinks grounds={contrast.grounds} packed={print ? null : packed} />
      </p>
      {print ? null : <Chooser {...props} />}
      <section class="scroll" tabindex={0} aria-labelledby="apart">
        <table>
          <caption id="apart">Only what differs</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">{a}</th>
              <th scope="col">{b}</th>
            </tr>
          </thead>
          <tbody>
            {contrast.verdict ? (
              <Row
                what="Verdict"
                first={VERDICT_WORDS[contrast.verdict[0]].words}
                second={VERDICT_WORDS[contrast.verdict[1]].words}
              />
            ) : null}
            {contrast.burden ? (
              <Row
                what="Cost and effort, 1 to 5"
                first={`${contrast.burden[0]}`}
                second={`${contrast.burden[1]}`}
              />
            ) : null}
            {contrast.sizes.map((size) => (
              <Row
                what={`${pieces[size.contaminant] ?? ''}: expected / safe to promise`}
                first={sideWords(size, 0)}
                second={sideWords(size, 1)}
              />
            ))}
            {rules.map((rule) => (
              <tr>
                <th scope="row">
                  <a href={ruleLink(rule.rule, packed)}>{rule.title}</a>
                  {rule.contaminants.length > 0
                    ? ` (${rule.contaminants.map((c) => pieces[c]).join('; ')})`
                    : ''}
                </th>
                <td>{outcomeWords(rule.outcomes[0])}</td>
                <td>{outcomeWords(rule.outcomes[1])}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p class="small">
        Sizes closer than 2 % and rules that came out alike are left out. Of machines of two kinds only rules
        that speak for or against one are set side by side.
      </p>
    </Page>
  )
}

function Row({ what, first, second }: { what: string; first: string; second: string }) {
  return (
    <tr>
      <th scope="row">{what}</th>
      <td>{first}</td>
      <td>{second}</td>
    </tr>
  )
}

function Chooser({ contrast, machines, point, packed }: RatherPageProps) {
  const choose = (name: 'first' | 'second', label: string) => (
    <p class="field">
      <label for={`choose-${name}`}>{label}</label>
      <select id={`choose-${name}`} name={name}>
        {machines.map(({ equipment, label: words }) => (
          <option value={equipment} selected={equipment === contrast[name]}>
            {words}
          </option>
        ))}
      </select>
    </p>
  )
  return (
    <form method="get" action="/advice/rather" class="chooser spaced">
      <input type="hidden" name="b" value={packed} />
      <input type="hidden" name="point" value={String(point)} />
      {choose('first', 'Machine')}
      {choose('second', 'Beside it')}
      <p>
        <button type="submit">Compare</button>
      </p>
    </form>
  )
}
