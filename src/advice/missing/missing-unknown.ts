import { fieldAt } from '../../brief/form/form-fields.ts'
import type { Advice, Brief, ConditionTrace, FactValues, RuleTrace } from '../../contract/index.ts'
import { placeId } from '../facts/place-id.ts'
import { wordList } from '../say/words.ts'

/** A rule that cannot be settled counts as this share of a turned verdict, by what it would do (judgement). */
const OPEN_RULE: Readonly<Record<RuleTrace['type'], number>> = {
  excludes: 0.5,
  weakens: 0.1,
  requires: 0.1,
  tests: 0.05,
  favours: 0.02,
  places: 0.02,
  warns: 0.02,
  records: 0,
  headline: 0,
  leaves: 0,
  asks: 0,
  grounds: 0,
  combines: 0,
  multiplies: 0,
  hinges: 0,
  parts: 0,
  alters: 0,
  matters: 0,
  misses: 0,
  judges: 0,
  tells: 0,
  notes: 0,
  prevents: 0.02,
}
/** A contaminant without a size to find leaves its answer open altogether. */
const OPEN_SIZE = 1

/** A field left open, by how much it could change the advice, as the rules are asked of it. */
export interface Open {
  readonly path: string
  readonly score: number
  readonly values: FactValues
}

type Known = Pick<Advice['trace'], 'facts' | 'calculations' | 'rules'>

const leafAt = (node: ConditionTrace, path: string): ConditionTrace | undefined =>
  path === ''
    ? node
    : path.split('.').reduce<ConditionTrace | undefined>((at, i) => at?.children?.[Number(i)], node)

/** The field of the brief behind a fact of a rule, e.g. points.0.packsPerMin; null where no field holds it. */
function fieldOf(fact: string, brief: Brief, rule: RuleTrace): string | null {
  const [group, field] = fact.split('.')
  const point = brief.points.findIndex(({ name }) => name === rule.point)
  const path =
    group === 'point'
      ? `points.${point}.${field}`
      : group === 'food'
        ? `product.${field}`
        : group === 'contaminant'
          ? `contaminants.${rule.contaminant}.${field}`
          : group === 'brief'
            ? field!
            : null
  if (path === null || path.includes('-1') || path.includes('null')) return null
  return fieldAt(path) ? path : null
}

/** Facts without a value behind one: itself, or what its calculation went in with. */
function unknownBehind(fact: string, rule: RuleTrace, brief: Brief, trace: Known): string[] {
  const at = brief.points.findIndex(({ name }) => name === rule.point)
  const scoped = (id: string) =>
    trace.facts.find(
      (f) =>
        f.id === id &&
        (f.scope === placeId({ point: at }) || f.scope.startsWith(`${placeId({ point: at })}.`)),
    ) ?? trace.facts.find((f) => f.id === id)
  const seen = new Set<string>()
  const walk = (id: string): string[] => {
    const known = scoped(id)
    if (seen.has(id) || !known || known.value !== null) return []
    seen.add(id)
    const inputs = trace.calculations.find((c) => c.id === known.calculation)?.inputs ?? []
    return inputs.length > 0 ? inputs.flatMap(walk) : [id]
  }
  return walk(fact)
}

/** Fields left empty without a usual value, by the rules they leave open; and sizes to find that are not set. */
export function unknownInputs(brief: Brief, trace: Known): Open[] {
  const open = new Map<string, Map<string, number>>()
  for (const rule of trace.rules.filter(({ outcome }) => outcome === 'unknown')) {
    const facts = rule.decisive.flatMap((path) => leafAt(rule.conditions, path)?.fact ?? [])
    for (const fact of facts.flatMap((id) => unknownBehind(id, rule, brief, trace))) {
      const path = fieldOf(fact, brief, rule)
      if (path) open.set(path, (open.get(path) ?? new Map()).set(rule.title, OPEN_RULE[rule.type]))
    }
  }
  const fields = [...open].map(
    ([path, titles]): Open => ({
      path,
      score: Number([...titles.values()].reduce((sum, share) => sum + share, 0).toPrecision(3)),
      values: {
        'missing.kind': 'open-rules',
        'missing.rules': titles.size,
        'missing.ruleNames': wordList([...titles.keys()].slice(0, 2)),
      },
    }),
  )
  const sizes = brief.contaminants.flatMap((contaminant, c): Open[] => {
    if (contaminant.mustFindMm !== null || brief.given.contaminants[c]?.basis !== undefined) return []
    const path = `contaminants.${c}.mustFindMm`
    return [{ path, score: OPEN_SIZE, values: { 'missing.kind': 'open-answer' } }]
  })
  return [...sizes, ...fields]
}
