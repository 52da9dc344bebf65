import type { Contrast } from '../../src/contract/reasoning.ts'
import { OUTCOME_WORDS } from '../words/outcome.ts'
import { sizeWords } from '../words/size.ts'
import { ANSWER_WORDS } from '../words/verdict.ts'

type SizeRow = Contrast['sizes'][number]
type RuleRow = Contrast['rules'][number]

/** "2.5 / 3.0 mm, met": expected, safe to promise, and whether the size asked is met. */
export function sideWords({ expectedMm, cautiousMm, meets }: SizeRow, side: 0 | 1): string {
  const { words } = ANSWER_WORDS[meets[side]]
  const [expected, cautious] = [expectedMm[side], cautiousMm[side]]
  if (expected === null) return `none, ${words}`
  if (cautious === null) return `${sizeWords(expected)} mm, nothing promised, ${words}`
  return `${sizeWords(expected)} / ${sizeWords(cautious)} mm, ${words}`
}

/** Rows of one rule in one row, with the contaminants it speaks of. */
export interface RuleLine extends Omit<RuleRow, 'contaminant'> {
  readonly contaminants: readonly number[]
}

/** A rule said once, whatever the number of contaminants it comes out the same for. */
export function ruleLines(rules: readonly RuleRow[]): RuleLine[] {
  const lines = new Map<string, RuleLine & { contaminants: number[] }>()
  for (const { contaminant, ...row } of rules) {
    const key = `${row.rule} ${row.outcomes.join(' ')}`
    const line = lines.get(key) ?? { ...row, contaminants: [] }
    if (contaminant !== null) line.contaminants.push(contaminant)
    lines.set(key, line)
  }
  return [...lines.values()]
}

export const outcomeWords = (outcome: RuleRow['outcomes'][number]): string =>
  outcome === null ? 'not asked' : OUTCOME_WORDS[outcome]
