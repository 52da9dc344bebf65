import type { Advice, RuleTrace } from '../../contract/index.ts'
import type { Rulebook, RuleExample } from './rule-schema.ts'
import { type SearchedGround, searchOf } from './rule-scope.ts'

/** What came of one example of one rule. */
export interface ExampleResult {
  readonly rule: string
  readonly file: string
  /** Number of the example within its rule, from 0. */
  readonly example: number
  readonly fires: boolean
  readonly passed: boolean
  /** What happened instead; empty when it passed. */
  readonly message: string
}

export interface ExampleReport {
  readonly results: readonly ExampleResult[]
  readonly failures: readonly ExampleResult[]
  /** Rules that fired nowhere, or everywhere they were decided, over all the examples together. */
  readonly neverFired: readonly string[]
  readonly alwaysFired: readonly string[]
}

/** What an example asks for beyond advice. */
export type Beside = Pick<RuleExample, 'fragment' | 'compare'>
/** What came of it: every rule that was tried. */
export type Tried = { readonly trace: Pick<Advice['trace'], 'rules'> }

/** Key of an example among all: what is searched for, the whole brief, and what is asked beside it. */
export const exampleKey = (
  search: SearchedGround | null,
  brief: unknown,
  { fragment, compare }: Beside,
): string => JSON.stringify([search, brief, fragment, compare])

/** What is said of a brief, with the one search a rule speaks of; quicker without any for all the others. */
type Advise = (brief: unknown, search: SearchedGround | null, beside: Beside) => Tried | Promise<Tried>
type Trace = RuleTrace & { readonly contaminant?: number | null }

/**
 * Runs every rule's examples through the whole of `advise` (which throws on a brief it refuses) and reads the
 * outcome from the trace. A firing example needs the rule to fire somewhere among the machines, points and
 * contaminants it names; a non-firing one needs it to be asked there and to fire nowhere.
 */
export async function runExamples(book: Rulebook, advise: Advise): Promise<ExampleReport> {
  const results: ExampleResult[] = []
  const seen: Trace[] = []
  const advised = new Map<string, readonly Trace[] | string>()
  for (const rule of book.rules) {
    const search = searchOf(rule)
    for (const [example, wanted] of rule.examples.entries()) {
      const brief = mergeBrief(book.baseBrief, wanted.brief)
      const key = exampleKey(search, brief, wanted)
      const traces = advised.get(key) ?? (await tracesOf(() => advise(brief, search, wanted)))
      if (!advised.has(key) && typeof traces !== 'string') seen.push(...traces)
      advised.set(key, traces)
      const message = typeof traces === 'string' ? traces : verdict(rule.id, wanted, traces)
      results.push({
        rule: rule.id,
        file: rule.file,
        example,
        fires: wanted.fires,
        passed: message === '',
        message,
      })
    }
  }
  const outcomes = (id: string) => seen.filter((trace) => trace.id === id).map(({ outcome }) => outcome)
  return {
    results,
    failures: results.filter((result) => !result.passed),
    neverFired: book.rules.map(({ id }) => id).filter((id) => !outcomes(id).includes('fired')),
    alwaysFired: book.rules.map(({ id }) => id).filter((id) => !outcomes(id).includes('not-fired')),
  }
}

async function tracesOf(advise: () => Tried | Promise<Tried>): Promise<readonly Trace[] | string> {
  try {
    return (await advise()).trace.rules
  } catch (error) {
    return `the example's brief gave no advice: ${(error as Error).message}`
  }
}

/** Empty when the traces answer the example, else what happened instead. */
function verdict(id: string, wanted: RuleExample, traces: readonly Trace[]): string {
  const asked = traces.filter(
    (trace) =>
      trace.id === id &&
      (wanted.equipment === undefined || trace.equipment === wanted.equipment) &&
      (wanted.contaminant === undefined || trace.contaminant === wanted.contaminant) &&
      (wanted.point === undefined || trace.point === wanted.point),
  )
  const outcomes = new Set(asked.map(({ outcome }) => outcome))
  if (asked.length === 0) return 'the rule was not asked anywhere the example names'
  if (wanted.fires) return outcomes.has('fired') ? '' : `expected to fire; it was ${[...outcomes].join(', ')}`
  if (outcomes.has('fired')) return 'expected not to fire; it fired'
  return outcomes.has('not-fired') ? '' : `expected not to fire; it was ${[...outcomes].join(', ')}`
}

/**
 * A brief with an example's differences laid over it: objects merge key by key, lists item by item with the
 * length of the example's list, null takes a key away, anything else replaces.
 */
export function mergeBrief(base: unknown, over: unknown): unknown {
  if (Array.isArray(over)) {
    const list = Array.isArray(base) ? base : []
    return over.map((item, i) => mergeBrief(list[i], item))
  }
  if (typeof over !== 'object' || over === null) return over
  const merged: Record<string, unknown> = isRecord(base) ? { ...base } : {}
  for (const [key, value] of Object.entries(over)) {
    if (value === null) delete merged[key]
    else merged[key] = mergeBrief(merged[key], value)
  }
  return merged
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
