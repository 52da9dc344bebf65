import type { Contaminant, Contrast, Finding, RuleTrace } from '../../contract/index.ts'
import type { Apart, PartingOfTwo, Standing, Worst } from '../stages.ts'
import { isShown, isTriedOnly, orderAmong, sizeRatio } from './order.ts'

/** Sizes closer than this share are the same: the model cannot tell them apart (judgement). */
const SAME_SIZE_SHARE = 0.02

/** True where two sizes, mm, can be told apart. */
export function differ(a: number | null, b: number | null): boolean {
  if (a === null || b === null) return a !== b
  return Math.abs(a - b) > SAME_SIZE_SHARE * Math.max(a, b)
}

/** Findings of both that are told apart. */
function sizesApart(first: Standing, second: Standing): Contrast['sizes'] {
  return first.findings.flatMap((a) => {
    const b = second.findings.find((f: Finding) => f.contaminant === a.contaminant)
    if (!b) return []
    const apart =
      a.meets !== b.meets || differ(a.expectedMm, b.expectedMm) || differ(a.cautiousMm, b.cautiousMm)
    return apart
      ? [
          {
            contaminant: a.contaminant,
            meets: [a.meets, b.meets],
            expectedMm: [a.expectedMm, b.expectedMm],
            cautiousMm: [a.cautiousMm, b.cautiousMm],
          },
        ]
      : []
  })
}

/** Outcomes that tell a reader nothing: the rule has nothing to do with the machine, or did not fire. */
const quiet = (outcome: RuleTrace['outcome'] | null) =>
  outcome === null || outcome === 'not-fired' || outcome === 'not-applicable'

/** Effects that speak for or against a machine; of machines of two families only these are set side by side. */
const ARGUES: readonly RuleTrace['type'][] = ['excludes', 'weakens', 'favours']

/** Effects that stand with a size, with two machines side by side, or with a change that was searched for. */
const SAID_ELSEWHERE: readonly RuleTrace['type'][] = ['notes', 'alters', 'parts', 'misses', 'judges']

/** A rule asked of one machine at one point. */
export type Asked = Pick<RuleTrace, 'title' | 'type' | 'contaminant' | 'outcome'> & {
  readonly rule: string
  readonly equipment: string | null
}

/** Rules of the machines themselves that came out differently and fired, or could not be settled, for one. */
function rulesApart(rules: readonly Asked[], first: string, second: string): Apart['rules'] {
  const asked = (equipment: string) =>
    new Map(
      rules
        .filter((one) => one.equipment === equipment)
        .map((one) => [`${one.rule} ${one.contaminant}`, one]),
    )
  const a = asked(first)
  const b = asked(second)
  return [...new Set([...a.keys(), ...b.keys()])].sort().flatMap((key) => {
    const [left, right] = [a.get(key), b.get(key)]
    const outcomes: Contrast['rules'][number]['outcomes'] = [left?.outcome ?? null, right?.outcome ?? null]
    if (outcomes[0] === outcomes[1] || outcomes.every(quiet)) return []
    const { rule, title, type, contaminant } = (left ?? right)!
    if (SAID_ELSEWHERE.includes(type) || ((!left || !right) && !ARGUES.includes(type))) return []
    return [{ rule, title, type, contaminant, outcomes }]
  })
}

/** Neither a verdict nor a place to compare: ruled out, or nothing met. */
const isOut = ({ excluded, verdict }: Standing) => excluded || verdict === 'not-suitable'

/** Where two options part in the order, with what each has there; null where nothing is decided between them. */
function partingOf(
  contaminants: readonly Contaminant[],
  options: readonly Standing[],
  first: Standing,
  second: Standing,
): PartingOfTwo | null {
  if ((first.rank === null) !== (second.rank === null) || (isOut(first) && isOut(second))) return null
  const { part, unmet, worstRatio } = orderAmong(contaminants, options)
  const parting = part(first, second)
  const those = ({ findings }: Standing, wanted: (finding: Finding) => boolean) =>
    findings.filter(wanted).map(({ contaminant }) => contaminant)
  const worst = (option: Standing): Worst => {
    const ratio = worstRatio(option)
    return { ratio, contaminant: option.findings.find((f) => sizeRatio(f) === ratio)?.contaminant ?? null }
  }
  return {
    ...parting,
    unmet: [unmet(first, parting.severity), unmet(second, parting.severity)],
    shown: [those(first, isShown), those(second, isShown)],
    tried: [those(first, isTriedOnly), those(second, isTriedOnly)],
    worst: [worst(first), worst(second)],
  }
}

/** Two options of one point side by side: only what differs. `rules` are those asked at the point. */
export function contrastOf(
  contaminants: readonly Contaminant[],
  rules: readonly Asked[],
  options: readonly Standing[],
  first: Standing,
  second: Standing,
): Apart {
  const pair = <T>(a: T, b: T): [T, T] | null => (a === b ? null : [a, b])
  return {
    first: first.equipment,
    second: second.equipment,
    parting: partingOf(contaminants, options, first, second),
    verdict: pair(first.verdict, second.verdict),
    burden: pair(first.burden, second.burden),
    sizes: sizesApart(first, second),
    rules: rulesApart(rules, first.equipment, second.equipment),
  }
}

/**
 * The machine recommended at a point (in use there, else the first of the order) against each other ranked one;
 * none where nothing at the point is to be recommended.
 */
export function contrastsAt(
  contaminants: readonly Contaminant[],
  rules: readonly Asked[],
  options: readonly Standing[],
  inUse: readonly string[],
): Apart[] {
  const ranked = options.filter((o) => o.rank !== null)
  const chosen = ranked.find(({ equipment }) => inUse.includes(equipment)) ?? ranked[0]
  if (!chosen || isOut(chosen)) return []
  return ranked
    .filter((other) => other !== chosen)
    .map((other) => contrastOf(contaminants, rules, ranked, chosen, other))
}
