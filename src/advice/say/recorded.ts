import type { Advice, Brief, Calculation } from '../../contract/index.ts'
import type { Asker } from '../stages.ts'
import { toRuleTrace } from './reason.ts'
import { sourcesUsed } from './sources-used.ts'

type Recorded = Pick<Advice, 'register' | 'checks'> & { readonly calculations: readonly Calculation[] }

/** What a rule rests on that a register lists as law, guidance or standard of its market. */
const LEGAL = ['law-opened', 'law-from-memory', 'guidance', 'standard', 'private-standard']

const evidenceOf = (book: Asker['book'], rule: string): string =>
  book.rules.find(({ id }) => id === rule)?.evidence ?? ''

/** A rule that holds because an x-ray machine was compared. */
const isOfXrays = (book: Asker['book'], rule: string): boolean =>
  JSON.stringify(book.rules.find(({ id }) => id === rule)?.conditions ?? '').includes('"brief.xrayMachines"')

/** Each rule that fired, with its sources, once. */
const citesOf = (fired: Asker['outcomes']): Advice['register']['cites'] => [
  ...new Map(fired.map(({ rule, sources }) => [rule, { rule, sources: [...sources] }])).values(),
]

/** Register, check plan and what was searched for with their facts, calculations, rules and sources in the trace. */
export function recorded(
  brief: Brief,
  { trace, cautions }: Pick<Advice, 'trace' | 'cautions'>,
  { register, checks, calculations }: Recorded,
  { book, outcomes, facts }: Asker,
): Pick<Advice, 'register' | 'checks' | 'trace'> {
  const fired = outcomes.filter(({ outcome }) => outcome === 'fired')
  const written = fired.filter(({ slot }) => slot !== null)
  const legal = cautions.filter(({ id }) => LEGAL.includes(evidenceOf(book, id)))
  const hasXray = checks.points.some(({ family }) => family === 'xray')
  const isElsewhere = (id: string) => !hasXray && isOfXrays(book, id)
  const law = legal.filter(({ id }) => !isElsewhere(id))
  const known = new Set(trace.sources.map(({ id }) => id))
  const more = sourcesUsed(book, calculations, fired).filter(({ id }) => !known.has(id))
  return {
    register: {
      ...register,
      cites: citesOf(written),
      law: law.map(({ id, text, sources }) => ({ text, rule: id, sources })),
      lawElsewhere: legal.filter(({ id }) => isElsewhere(id)).map(({ id }) => id),
    },
    checks,
    trace: {
      ...trace,
      facts: [...trace.facts, ...facts.values()],
      calculations: [...trace.calculations, ...calculations],
      rules: [...trace.rules, ...outcomes.map((outcome) => toRuleTrace(outcome, brief))],
      sources: [...trace.sources, ...more].sort((a, b) => (a.id < b.id ? -1 : 1)),
    },
  }
}
