import { Engine, type RuleProperties } from 'json-rules-engine'
import type { Fact } from '../../contract/index.ts'
import type { Condition } from '../book/condition.ts'
import type { Rulebook } from '../book/rule-schema.ts'
import type { RuleScope } from '../book/rule-scope.ts'
import { THRESHOLD } from '../facts/list/fact-definition.ts'
import type { RuleOutcome } from '../stages.ts'
import { isSettled } from './decisive.ts'
import { explainAll, rulesIn } from './rule-outcome.ts'

/**
 * Outcome of every rule of a scope, decided by the rules engine over constant facts, ordered by rule id.
 * A rule the explainer finds undecidable (unknown or not applicable) is kept out of the engine's verdict,
 * because the engine has only two values. A trial book is asked of the explainer alone: a search tries out many
 * briefs, and what it finds is run again by the book itself. Throws when the engine loses a rule, when engine and explainer
 * disagree, or when a fact is not in the fact list or not of its type.
 */
export async function decide(
  book: Rulebook,
  scope: RuleScope,
  facts: readonly Fact[],
): Promise<readonly RuleOutcome[]> {
  const explained = explainAll(book, scope, facts)
  if (explained.length === 0 || book.trial) return explained
  const verdicts = await runEngine(engineFor(book, scope), engineFacts(book, facts), explained.length)
  holdTogether(explained, verdicts)
  return explained
}

/** Throws unless the engine says the same as the explainer of every rule the explainer could settle. */
export function holdTogether(
  explained: readonly Pick<RuleOutcome, 'rule' | 'truth'>[],
  verdicts: ReadonlyMap<string, boolean>,
): void {
  for (const { rule, truth } of explained) {
    const verdict = verdicts.get(rule)
    if (isSettled(truth) && verdict !== (truth === 'true'))
      throw new Error(`rule "${rule}": the engine says ${verdict}, the explainer says ${truth}`)
  }
}

const engines = new WeakMap<Rulebook, Map<RuleScope, Engine>>()

/** The engine of a scope, built once for a book. */
function engineFor(book: Rulebook, scope: RuleScope): Engine {
  const scopes = engines.get(book) ?? new Map<RuleScope, Engine>()
  engines.set(book, scopes)
  const engine = scopes.get(scope) ?? buildEngine(rulesIn(book, scope))
  scopes.set(scope, engine)
  return engine
}

/** An engine over named conditions. Facts may be missing: the caller knows which verdicts then count. */
export function buildEngine(
  rules: readonly { readonly id: string; readonly conditions: Condition }[],
): Engine {
  return new Engine(
    rules.map(({ id, conditions }) => ({
      name: id,
      conditions: structuredClone(conditions) as RuleProperties['conditions'],
      event: { type: id },
    })),
    { allowUndefinedFacts: true },
  )
}

/** Runs of one engine wait for each other: overlapping runs would lose rules without a word. */
const queue = new WeakMap<Engine, Promise<unknown>>()

/** Verdict of every rule by name; an error unless all `expected` rules answered. */
export async function runEngine(
  engine: Engine,
  facts: Readonly<Record<string, unknown>>,
  expected: number,
): Promise<ReadonlyMap<string, boolean>> {
  const before = queue.get(engine) ?? Promise.resolve()
  const run = before.then(() => engine.run({ ...facts }))
  const settled = run.then(
    () => undefined,
    () => undefined,
  )
  queue.set(engine, settled)
  const { results, failureResults } = await run
  const answered = results.length + failureResults.length
  if (answered !== expected)
    throw new Error(`the rules engine answered ${answered} of ${expected} rules; the run cannot be used`)
  return new Map([...results, ...failureResults].map((result) => [result.name, result.result === true]))
}

function engineFacts(book: Rulebook, facts: readonly Fact[]): Readonly<Record<string, unknown>> {
  const all: Record<string, unknown> = { ...thresholdFacts(book) }
  for (const { id, value } of facts) all[id] = value
  return all
}

const thresholdsKnown = new WeakMap<Rulebook['thresholds'], Readonly<Record<string, unknown>>>()

/** The thresholds of a book as facts; the same for every scope. */
function thresholdFacts({ thresholds }: Rulebook): Readonly<Record<string, unknown>> {
  const known =
    thresholdsKnown.get(thresholds) ??
    Object.fromEntries([...thresholds.values()].map(({ id, value }) => [THRESHOLD + id, value]))
  thresholdsKnown.set(thresholds, known)
  return known
}
