import { readFileSync } from 'node:fs'
import { assessDetector, assessRemovals } from './advice/assess/assess-machine.ts'
import { lineUp } from './advice/assess/line-up.ts'
import { loadRulebook, type Rulebook } from './advice/book/rulebook.ts'
import type { AdviseGiven } from './advice/change/advise-given.ts'
import { type Named, whatWouldChange } from './advice/change/change.ts'
import { judge } from './advice/decide/judge.ts'
import { missingInputs } from './advice/missing/missing.ts'
import { closeCallOf } from './advice/order/close-call.ts'
import { combine } from './advice/order/combine.ts'
import { contrastsAt } from './advice/order/contrast.ts'
import { type Candidate, outcomesFor, rankOptions } from './advice/order/options.ts'
import { cautionsFrom } from './advice/say/cautions.ts'
import { preventionOf } from './advice/say/prevention.ts'
import { judgeQuotes } from './advice/say/quotes.ts'
import { toRuleTrace } from './advice/say/reason.ts'
import { judgedRemovals } from './advice/say/removals.ts'
import { RADIATION_CAUTION, STANDING_CAUTIONS } from './advice/say/safety.ts'
import { hopeless, summarise } from './advice/say/summary.ts'
import { parseBrief } from './brief/index.ts'
import type { Advice, Brief, Calculation, Source } from './contract/index.ts'
import { electricalSources } from './reference/electrical.ts'
import { materials, sources as referenceSources, referenceVersion } from './reference/index.ts'
import { separationSources } from './reference/separation.ts'

const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as {
  version: string
}

export interface AdviseOptions {
  /** Leaves out the search for what would change the advice. */
  readonly withoutChanges?: boolean
  /** Leaves out the scoring of what is not given. */
  readonly withoutMissing?: boolean
  /** The rule book to decide by; the house's own unless given. */
  readonly book?: Rulebook
}

let houseBook: Rulebook | null = null

type Points = Advice['points']

/** Advice on a changed brief under the same book, without searching on from there. */
const againUnder =
  (book: Rulebook): AdviseGiven =>
  async (given) => {
    const parsed = parseBrief(given)
    return parsed.ok ? advise(parsed.brief, { book, withoutChanges: true, withoutMissing: true }) : null
  }

/** The book as it is asked while a search tries things out. */
const trialOf = (book: Rulebook): Rulebook => ({ ...book, trial: true })

/** What would change the advice, searched by giving advice on changed briefs. */
async function changesOf(
  brief: Brief,
  points: Points,
  unmet: number[],
  book: Rulebook,
  options: AdviseOptions,
) {
  if (options.withoutChanges) return { changes: [], changesNote: '' }
  const machineOf = (id: string): Named => {
    const described = brief.equipment.find((m) => typeof m !== 'string' && m.id === id)
    const machine = brief.points.flatMap(({ stage }) => lineUp(brief, stage)).find((l) => l.machine.id === id)
    return { given: described ?? id, machine: machine!.machine }
  }
  return whatWouldChange(brief, points, unmet, machineOf, againUnder(book), againUnder(trialOf(book)))
}

/** Each id once, in the order first met. */
function byId<T extends { readonly id: string }>(items: readonly T[]): T[] {
  return [...new Map(items.map((item) => [item.id, item])).values()]
}

function usedSources(
  book: Rulebook,
  calculations: readonly Calculation[],
  reasons: readonly string[],
): Source[] {
  const ids = new Set([...calculations.flatMap((c) => c.sources), ...reasons])
  return [...ids].sort().flatMap((id): Source[] => {
    const source =
      book.sources.get(id) ??
      referenceSources.get(id) ??
      electricalSources.get(id) ??
      separationSources.get(id)
    return source ? [{ id, text: source.text, mark: source.mark }] : []
  })
}

/**
 * The one public function: a brief in, advice out. Physics works out the sizes, rules decide over facts, and
 * everything said can be walked back through the trace. Errors: a rule book that contradicts itself.
 */
export async function advise(brief: Brief, options: AdviseOptions = {}): Promise<Advice> {
  houseBook ??= options.book ? null : loadRulebook()
  const book = options.book ?? houseBook!
  const lineUps = brief.points.map((point) => lineUp(brief, point.stage))
  const removals = lineUps.map((line, pointIndex) => assessRemovals(brief, pointIndex, line))
  const lines = lineUps.map((line, pointIndex) =>
    line.flatMap((linedUp) => {
      const done = assessDetector(brief, pointIndex, linedUp)
      return done ? [{ linedUp, ...done }] : []
    }),
  )
  const assessed = lines.flat().map((one) => one.assessed)
  const taken = removals.flatMap((there, pointIndex) =>
    there
      .filter(({ applicable }) => applicable)
      .map((assessment) => ({
        family: assessment.family,
        pointIndex,
        machine: { id: assessment.equipment },
        assessment,
      })),
  )
  const judgement = await judge(book, brief, [...assessed, ...taken], materials)

  const trace = { rules: judgement.outcomes.map((o) => toRuleTrace(o, brief)) }
  const ranked = lines.map((line, pointIndex) => {
    const candidates = line.map(
      (one): Candidate => ({
        ...one,
        outcomes: outcomesFor(judgement.outcomes, pointIndex, one.linedUp.machine.id),
      }),
    )
    return {
      name: brief.points[pointIndex]!.name,
      options: rankOptions(brief, candidates),
      removals: removals[pointIndex]!.flatMap((one) => judgedRemovals(one, pointIndex, judgement.outcomes)),
    }
  })
  const points = ranked.map((point, pointIndex) => ({
    ...point,
    contrasts: contrastsAt(brief, { points: ranked, trace }, pointIndex),
    closeCall: closeCallOf(brief, point.options),
  }))
  const combination = combine(brief, points)
  const general = judgement.outcomes.filter((o) => o.outcome === 'fired' && o.equipment === null)
  const cautions = cautionsFrom(
    brief,
    general.filter((o) => o.pointIndex === null || o.type === 'warns'),
  )
  const calculations = byId([
    ...assessed.flatMap((one) => one.assessment.calculations),
    ...removals.flat().flatMap((one) => one.calculations),
    ...judgement.calculations,
  ])
  const fired = judgement.outcomes.filter((o) => o.outcome === 'fired')
  const prevention = preventionOf(
    brief,
    [...hopeless(brief, points), ...combination.unmet],
    new Set(fired.map(({ rule }) => rule)),
  )
  const known = { facts: [...judgement.facts], calculations }
  const versions = { gritwise: version, rules: book.version, reference: referenceVersion }
  return {
    brief: brief.given,
    assumed: brief.assumed.map((a) => ({ ...a, range: a.range ? [a.range[0], a.range[1]] : null })),
    missing: options.withoutMissing
      ? []
      : await missingInputs(brief, points, { ...trace, ...known }, againUnder(trialOf(book))),
    versions,
    summary: summarise(brief, points),
    points,
    combination,
    prevention,
    ...(await changesOf(brief, points, combination.unmet, book, options)),
    quotes: judgeQuotes(brief, points),
    register: {},
    checks: {},
    trace: {
      versions,
      ...known,
      ...trace,
      sources: usedSources(
        book,
        calculations,
        [...fired, ...prevention].flatMap(({ sources }) => [...sources]),
      ),
    },
    cautions: byId([
      ...cautions,
      ...(assessed.some((one) => one.family === 'xray') ? [RADIATION_CAUTION] : []),
      ...STANDING_CAUTIONS,
    ]),
  }
}
