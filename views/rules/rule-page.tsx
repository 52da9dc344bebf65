import { rulesLink } from '../advice/links.ts'
import { Page } from '../page.tsx'
import { EVIDENCE_WORDS } from '../words/evidence.ts'
import { MARK_WORDS } from '../words/mark.ts'
import { OUTCOME_WORDS } from '../words/outcome.ts'
import { valueWords } from '../words/size.ts'
import type { RuleCard } from './rule-card.ts'
import { RuleCondition } from './rule-condition.tsx'
import { EFFECT_WORDS, groundWords } from './rule-words.ts'

interface Props {
  readonly card: RuleCard
  readonly version: string
  readonly packed: string | null
}

/** One rule with all that stands behind it; its address never changes. */
export function RulePage({ card, version, packed }: Props) {
  const asked = card.appliesTo.map(groundWords).join(', ')
  return (
    <Page title={`Rule: ${card.title}`} packed={packed} here="rules">
      <p class="over-title">
        <a href={packed ? `/rules?b=${packed}` : '/rules'}>Rule book</a>
      </p>
      <h1>{card.title}</h1>
      <p class="standfirst">{card.text}</p>
      <dl class="uses">
        <dt>Because</dt>
        <dd>{card.because}</dd>
        <dt>Exception</dt>
        <dd>{card.exception}</dd>
        <dt>What it does</dt>
        <dd>
          {EFFECT_WORDS[card.type]}; asked of {asked}
          {card.perContaminant ? ', for each contaminant' : ''}
        </dd>
        <dt>Evidence</dt>
        <dd>{EVIDENCE_WORDS[card.evidence]}</dd>
        <dt>Its permanent name</dt>
        <dd>
          <code>{card.id}</code>, from the {card.book} book; the books in use are {version}
        </dd>
      </dl>
      <section aria-labelledby="condition">
        <h2 id="condition">It applies when</h2>
        <div class="rule-condition">
          <RuleCondition node={card.conditions} />
        </div>
      </section>
      <Thresholds card={card} />
      <section aria-labelledby="rule-sources">
        <h2 id="rule-sources">Sources</h2>
        <ul>
          {card.sources.map(({ text, mark }) => (
            <li>
              {text} <span class="small">({MARK_WORDS[mark] ?? mark})</span>
            </li>
          ))}
        </ul>
      </section>
      <Places card={card} packed={packed} />
      <Examples card={card} />
    </Page>
  )
}

function Thresholds({ card }: { card: RuleCard }) {
  if (card.thresholds.length === 0) return null
  return (
    <section aria-labelledby="thresholds">
      <h2 id="thresholds">Thresholds</h2>
      <ul>
        {card.thresholds.map(({ id, label, value, unit, evidence, source }) => (
          <li>
            {label}: <strong>{`${valueWords(value)} ${unit}`.trim()}</strong> <code>{id}</code>{' '}
            <span class="small">
              ({EVIDENCE_WORDS[evidence]}: {source})
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}

function Places({ card, packed }: { card: RuleCard; packed: string | null }) {
  if (card.places === null || packed === null) return null
  return (
    <section aria-labelledby="here">
      <h2 id="here">For the brief in hand</h2>
      {card.places.length === 0 ? (
        <p>It was not asked: the brief has no machine or place it speaks of.</p>
      ) : (
        <ul>
          {card.places.map(({ outcome, where, pieces, point, equipment }) => (
            <li>
              {where === '' ? 'The brief as a whole' : where}: <strong>{OUTCOME_WORDS[outcome]}</strong>
              {pieces.length > 0 ? ` for ${pieces.join('; ')}` : ''}
              {point !== null && equipment !== '' ? (
                <>
                  {' '}
                  <a href={rulesLink({ packed }, point, equipment)}>
                    conditions<span class="unseen">: {where}</span>
                  </a>
                </>
              ) : null}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

function Examples({ card }: { card: RuleCard }) {
  return (
    <section aria-labelledby="examples">
      <h2 id="examples">Examples it must answer</h2>
      <p>
        Each is laid over the base brief of the book and run through the whole of the advice;{' '}
        <code>gritwise rules check</code> runs them all.
      </p>
      <ul>
        {card.examples.map(({ fires, place, differs, packed }, at) => (
          <li>
            <strong>{fires ? 'Applies' : 'Does not apply'}</strong>
            {place ? ` (${place})` : ''}: <code class="differs">{differs}</code>{' '}
            {packed ? (
              <a href={`/advice?b=${packed}`}>
                Advice on it<span class="unseen">: example {at + 1}</span>
              </a>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  )
}
