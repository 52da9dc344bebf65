import { ruleLink } from '../advice/links.ts'
import { Page } from '../page.tsx'
import { EVIDENCE_WORDS } from '../words/evidence.ts'
import { grouped } from '../words/grouped.ts'
import { OUTCOME_WORDS } from '../words/outcome.ts'
import { filtered, outcomeOf, type RuleCard, type RuleFilter } from './rule-card.ts'
import { EFFECT_WORDS, groundWords } from './rule-words.ts'

export interface RuleBookProps {
  readonly cards: readonly RuleCard[]
  readonly filter: RuleFilter
  readonly version: string
  readonly changelog: readonly { readonly version: string; readonly changes: readonly string[] }[]
  readonly packed: string | null
  /** Title of the brief in hand; empty without one. */
  readonly title: string
}

/** Every rule of the book by subject, narrowed down as asked. */
export function RuleBookPage(props: RuleBookProps) {
  const { cards, filter, version, changelog, packed, title } = props
  const shown = filtered(cards, filter)
  const several = new Set(cards.map((card) => card.book)).size > 1
  const subjects = grouped(shown, (card) => card.subject)
  return (
    <Page title="Rule book" packed={packed} here="rules">
      <h1>Rule book</h1>
      <p class="standfirst">
        {cards.length} rules, {version}. Physics computes sizes; these rules say what follows from them, each
        with its reason, its exception, its sources and examples it must answer.
        {title ? ` What each did is shown for the brief in hand: ${title}.` : ''}
      </p>
      <Filters {...props} />
      <p role="status">
        {shown.length === cards.length
          ? `All ${cards.length} rules`
          : `${shown.length} of ${cards.length} rules`}
      </p>
      {[...subjects].map(([subject, rules], at) => (
        <section aria-labelledby={`subject-${at}`}>
          <h2 id={`subject-${at}`}>{subject}</h2>
          <ul class="rule-list">
            {rules.map((card) => (
              <RuleLine card={card} packed={packed} book={several ? card.book : ''} />
            ))}
          </ul>
        </section>
      ))}
      <section aria-labelledby="changelog">
        <h2 id="changelog">Changes of the book</h2>
        {changelog.map(({ version: of, changes }) => (
          <>
            <h3>{of}</h3>
            <ul>
              {changes.map((change) => (
                <li>{change}</li>
              ))}
            </ul>
          </>
        ))}
      </section>
    </Page>
  )
}

/** A rule in a line; its book is named where there are several. */
function RuleLine({ card, packed, book }: { card: RuleCard; packed: string | null; book: string }) {
  const outcome = outcomeOf(card)
  const fired = card.places?.filter((place) => place.outcome === 'fired').length ?? 0
  return (
    <li>
      <a href={ruleLink(card.id, packed)}>{card.title}</a>{' '}
      <span class="small">
        {EFFECT_WORDS[card.type]}; {EVIDENCE_WORDS[card.evidence]};{' '}
        {card.appliesTo.map(groundWords).join(', ')}
        {book === '' ? '' : `; from the ${book} book`}
        {outcome === null ? '' : `; here: ${OUTCOME_WORDS[outcome]}`}
        {fired > 1 ? ` in ${fired} places` : ''}
      </span>
    </li>
  )
}

function Filters({ cards, filter, packed }: RuleBookProps) {
  const all = (pick: (card: RuleCard) => readonly string[]) => [...new Set(cards.flatMap(pick))].sort()
  const choose = (
    name: keyof RuleFilter,
    label: string,
    values: readonly string[],
    words: (value: string) => string = (value) => value,
  ) => (
    <p class="field">
      <label for={`filter-${name}`}>{label}</label>
      <select id={`filter-${name}`} name={name}>
        <option value="">All</option>
        {values.map((value) => (
          <option value={value} selected={value === filter[name]}>
            {words(value)}
          </option>
        ))}
      </select>
    </p>
  )
  return (
    <form method="get" action="/rules" class="chooser">
      {packed ? <input type="hidden" name="b" value={packed} /> : null}
      {choose(
        'subject',
        'Subject',
        all((card) => [card.subject]),
      )}
      {choose(
        'family',
        'Asked of',
        all((card) => card.appliesTo),
        groundWords,
      )}
      {choose(
        'evidence',
        'Evidence',
        all((card) => [card.evidence]),
        (value) => EVIDENCE_WORDS[value as keyof typeof EVIDENCE_WORDS] ?? value,
      )}
      {packed
        ? choose('outcome', 'For this brief', Object.keys(OUTCOME_WORDS), (value) =>
            value in OUTCOME_WORDS ? OUTCOME_WORDS[value as keyof typeof OUTCOME_WORDS] : value,
          )
        : null}
      <p>
        <button type="submit">Show</button>
      </p>
    </form>
  )
}
