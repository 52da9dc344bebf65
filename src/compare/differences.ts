import type { Finding, Reason, Verdict } from '../contract/index.ts'
import { figuresOf } from './figures.ts'
import type { Side } from './sides.ts'

/** A figure in which the sides differ; null where a side has none. */
export interface FigureRow {
  readonly words: string
  readonly cells: readonly (string | null)[]
}

/** A contaminant the sides find at different sizes, or meet differently. */
export interface SizeRow {
  readonly contaminant: number
  readonly findings: readonly (Finding | null)[]
}

/** Of reasons, those that weigh for or against; what is required or to be tested stands in questions and clause. */
const WEIGHING: readonly Reason['type'][] = ['excludes', 'weakens', 'favours']

/** A rule that speaks of some sides and not of others; its text per side, null where it did not fire. */
export interface RuleRow {
  readonly rule: string
  readonly title: string
  readonly texts: readonly (string | null)[]
}

/** Only what differs, and the names of what does not; the verdicts always, since they are asked first. */
export interface Differences {
  readonly verdicts: readonly Verdict[]
  readonly burdens: readonly number[] | null
  /** Figures all sides have, where they differ. */
  readonly figures: readonly FigureRow[]
  /** Figures that only some sides have: words and value, by side. */
  readonly ownFigures: readonly (readonly { readonly words: string; readonly value: string }[])[]
  readonly sizes: readonly SizeRow[]
  readonly rules: readonly RuleRow[]
  readonly same: { readonly figures: readonly string[]; readonly contaminants: readonly number[] }
}

/** Sizes closer than this share are the same: the model cannot tell them apart (judgement). */
export const SAME_SIZE_SHARE = 0.02

/** True where two sizes, mm, are told apart; a size and none always are. */
export function sizesDiffer(a: number | null, b: number | null): boolean {
  if (a === null || b === null) return a !== b
  return Math.abs(a - b) > SAME_SIZE_SHARE * Math.max(a, b)
}

const allEqual = <T>(items: readonly T[]) => items.every((item) => item === items[0])

function findingsDiffer(findings: readonly (Finding | null)[]): boolean {
  const [first, ...others] = findings
  return others.some(
    (other) =>
      (first === null) !== (other === null) ||
      first?.meets !== other?.meets ||
      first?.mustFindMm !== other?.mustFindMm ||
      sizesDiffer(first?.expectedMm ?? null, other?.expectedMm ?? null) ||
      sizesDiffer(first?.cautiousMm ?? null, other?.cautiousMm ?? null),
  )
}

/** What the sides differ in; contaminants by their number in the list of pieces. */
export function differencesOf(sides: readonly Side[]): Differences {
  const figures = sides.map(figuresOf)
  const named = [...new Set(figures.flatMap((one) => [...one.keys()]))]
  const rows = named.map((words) => ({ words, cells: figures.map((one) => one.get(words) ?? null) }))
  const findings = (sides[0]?.findings ?? []).map((_, contaminant) => ({
    contaminant,
    findings: sides.map((side) => side.findings[contaminant] ?? null),
  }))
  const verdicts = sides.map(({ option }) => option.verdict)
  const burdens = sides.map(({ option }) => option.burden)
  return {
    verdicts,
    burdens: allEqual(burdens) ? null : burdens,
    figures: rows.filter(({ cells }) => !allEqual(cells) && !cells.includes(null)),
    ownFigures: figures.map((own) =>
      [...own].flatMap(([words, value]) =>
        figures.every((other) => other.has(words)) ? [] : [{ words, value }],
      ),
    ),
    sizes: findings.filter((row) => findingsDiffer(row.findings)),
    rules: rulesThatDiffer(sides),
    same: {
      figures: rows.filter(({ cells }) => allEqual(cells)).map(({ words }) => words),
      contaminants: findings.filter((row) => !findingsDiffer(row.findings)).map((row) => row.contaminant),
    },
  }
}

function rulesThatDiffer(sides: readonly Side[]): RuleRow[] {
  const fired = sides.map(
    ({ option }) =>
      new Map(
        option.reasons
          .filter(({ type, truth }) => truth === 'true' && WEIGHING.includes(type))
          .map((r) => [r.rule, r]),
      ),
  )
  const rules = new Map(fired.flatMap((one) => [...one]))
  return [...rules.values()]
    .map(({ rule, title }) => ({
      rule,
      title: title || rule,
      texts: fired.map((one) => one.get(rule)?.text ?? null),
    }))
    .filter(({ texts }) => texts.some((text) => text === null))
}
