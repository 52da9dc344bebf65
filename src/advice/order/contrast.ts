import type { Advice, Brief, Contrast, Finding, Option, RuleTrace } from '../../contract/index.ts'
import { partingWords } from '../say/parting-words.ts'

/** Sizes closer than this share are the same: the model cannot tell them apart (judgement). */
const SAME_SIZE_SHARE = 0.02

function differ(a: number | null, b: number | null): boolean {
  if (a === null || b === null) return a !== b
  return Math.abs(a - b) > SAME_SIZE_SHARE * Math.max(a, b)
}

/** Findings of both that are told apart. */
function sizesApart(first: Option, second: Option): Contrast['sizes'] {
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

/** The part of an advice that two options are compared in. */
export type Compared = { readonly trace: { readonly rules: readonly RuleTrace[] } } & {
  readonly points: readonly Pick<Advice['points'][number], 'name' | 'options'>[]
}

/** Effects that speak for or against a machine; of machines of two families only these are set side by side. */
const ARGUES: readonly RuleTrace['type'][] = ['excludes', 'weakens', 'favours']

/** Rules of the machines themselves that came out differently and fired, or could not be settled, for one. */
function rulesApart(advice: Compared, point: string, first: Option, second: Option): Contrast['rules'] {
  const asked = (equipment: string) =>
    new Map(
      advice.trace.rules
        .filter((rule) => rule.point === point && rule.equipment === equipment)
        .map((rule) => [`${rule.id} ${rule.contaminant}`, rule]),
    )
  const a = asked(first.equipment)
  const b = asked(second.equipment)
  const textOf = (option: Option, trace: RuleTrace | undefined) =>
    (trace && option.reasons.find((reason) => reason.trace === trace.key)?.text) ?? ''
  return [...new Set([...a.keys(), ...b.keys()])].sort().flatMap((key) => {
    const [left, right] = [a.get(key), b.get(key)]
    const outcomes: Contrast['rules'][number]['outcomes'] = [left?.outcome ?? null, right?.outcome ?? null]
    if (outcomes[0] === outcomes[1] || outcomes.every(quiet)) return []
    const { id, title, type, contaminant } = (left ?? right)!
    if ((!left || !right) && !ARGUES.includes(type)) return []
    const text = textOf(first, left) || textOf(second, right)
    return [{ rule: id, title, type, contaminant, outcomes, text }]
  })
}

/** Two options of one point side by side: only what differs, and what puts one before the other. */
export function contrastOf(
  brief: Brief,
  advice: Compared,
  pointIndex: number,
  first: Option,
  second: Option,
): Contrast {
  const point = advice.points[pointIndex]!.name
  const pair = <T>(a: T, b: T): [T, T] | null => (a === b ? null : [a, b])
  return {
    first: first.equipment,
    second: second.equipment,
    because: partingWords(brief, first, second),
    verdict: pair(first.verdict, second.verdict),
    burden: pair(first.burden, second.burden),
    sizes: sizesApart(first, second),
    rules: rulesApart(advice, point, first, second),
  }
}

/** The first option of a point against each other ranked one. */
export function contrastsAt(brief: Brief, advice: Compared, pointIndex: number): Contrast[] {
  const [first, ...others] = advice.points[pointIndex]!.options.filter((o) => o.rank !== null)
  return first ? others.map((other) => contrastOf(brief, advice, pointIndex, first, other)) : []
}
