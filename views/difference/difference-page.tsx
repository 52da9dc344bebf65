import type { Difference } from '../../src/contract/reasoning.ts'
import { ruleLink } from '../advice/links.ts'
import { Page } from '../page.tsx'
import { isNothing, placeWords, turnWords, verdictWords } from './difference-words.ts'

export interface ThresholdChoice {
  readonly id: string
  readonly words: string
}

export interface DifferencePageProps {
  readonly packed: string
  readonly title: string
  readonly thresholds: readonly ThresholdChoice[]
  readonly rules: readonly ThresholdChoice[]
  /** What was asked, to be shown again. */
  readonly asked: {
    readonly threshold: string
    readonly value: string
    readonly without: string
    readonly pasted: string
  }
  readonly problem: string
  /** null until another book was named. */
  readonly difference: Difference | null
  readonly pieces: readonly string[]
}

/** The same brief judged by another rule book, and what that changes. */
export function DifferencePage(props: DifferencePageProps) {
  const { packed, title, problem, difference } = props
  return (
    <Page title={`${problem ? 'Error: ' : ''}Another rule book: ${title}`} packed={packed} here="other">
      {problem ? (
        <div class="summary-of-errors" role="alert" tabindex={-1}>
          <h2>There is a problem</h2>
          <p>{problem}</p>
        </div>
      ) : null}
      <p class="over-title">
        <a href={`/advice?b=${packed}`}>Advice</a>
      </p>
      <h1>Judged by another rule book</h1>
      <p class="standfirst">
        {`${title}: the same physics, other rules. Move a threshold, take a rule out, or lay rules of your own over the book.`}
      </p>
      {difference ? <Found {...props} difference={difference} /> : null}
      <OneChange {...props} />
      <OwnRules {...props} />
    </Page>
  )
}

function Found({ difference, packed, pieces }: DifferencePageProps & { difference: Difference }) {
  return (
    <section aria-labelledby="changed">
      <h2 id="changed">What changes</h2>
      <p class="small">
        From {difference.from.rules} to {difference.to.rules}; reference data {difference.to.reference}.
      </p>
      {isNothing(difference) ? (
        <p role="status">Nothing: every rule that spoke still says the same.</p>
      ) : null}
      {difference.summary ? (
        <dl class="uses">
          <dt>Before</dt>
          <dd>{difference.summary[0]}</dd>
          <dt>After</dt>
          <dd>{difference.summary[1]}</dd>
        </dl>
      ) : null}
      {difference.verdicts.length > 0 ? (
        <>
          <h3>Verdicts and places</h3>
          <ul>
            {difference.verdicts.map((verdict) => (
              <li>{verdictWords(verdict)}</li>
            ))}
          </ul>
        </>
      ) : null}
      {difference.rules.length > 0 ? (
        <>
          <h3>Rules ({difference.rules.length})</h3>
          <ul>
            {difference.rules.map((rule) => (
              <li>
                {rule.from === null ? rule.title : <a href={ruleLink(rule.id, packed)}>{rule.title}</a>}{' '}
                <span class="small">
                  ({placeWords(rule)}
                  {rule.contaminant === null ? '' : `, ${pieces[rule.contaminant] ?? ''}`})
                </span>
                : {turnWords(rule)}
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </section>
  )
}

function OneChange({ packed, thresholds, rules, asked }: DifferencePageProps) {
  const choose = (name: 'threshold' | 'without', label: string, choices: readonly ThresholdChoice[]) => (
    <p class="field">
      <label for={`choose-${name}`}>{label}</label>
      <select id={`choose-${name}`} name={name}>
        <option value="">None</option>
        {choices.map(({ id, words }) => (
          <option value={id} selected={id === asked[name]}>
            {words}
          </option>
        ))}
      </select>
    </p>
  )
  return (
    <section aria-labelledby="one-change">
      <h2 id="one-change">One change</h2>
      <form method="get" action="/advice/difference" class="chooser">
        <input type="hidden" name="b" value={packed} />
        {choose('threshold', 'Threshold', thresholds)}
        <p class="field">
          <label for="choose-value">Its new value, in the same unit</label>
          <input
            type="text"
            inputmode="decimal"
            autocomplete="off"
            id="choose-value"
            name="value"
            value={asked.value}
          />
        </p>
        {choose('without', 'Take out the rule', rules)}
        <p>
          <button type="submit">Judge again</button>
        </p>
      </form>
    </section>
  )
}

function OwnRules({ packed, asked }: DifferencePageProps) {
  return (
    <section aria-labelledby="own-rules">
      <h2 id="own-rules">Rules of your own</h2>
      <form method="post" action={`/advice/difference?b=${packed}`}>
        <div class="field wide">
          <label for="pasted">Rules as JSON</label>
          <p class="hint" id="hint-pasted">
            One object with name, version, rules, thresholds and sources, each entry in the shape of the rule
            book; a rule with an id of the book takes its place. Nothing is kept.
          </p>
          <textarea id="pasted" name="pasted" rows={8} spellcheck={false} aria-describedby="hint-pasted">
            {asked.pasted}
          </textarea>
        </div>
        <button type="submit" class="quiet">
          Judge by these rules
        </button>
      </form>
    </section>
  )
}
