import type { Difference } from '../../src/contract/reasoning.ts'
import { OUTCOME_WORDS } from '../words/outcome.ts'
import { VERDICT_WORDS } from '../words/verdict.ts'

type Verdict = Difference['verdicts'][number]
type Rule = Difference['rules'][number]

const rankWords = (rank: number | null) => (rank === null ? 'not ranked' : `place ${rank}`)

/** "after packing, x-ray …: best fit to this brief, place 1 → test first, place 2". */
export function verdictWords({ point, label, from, to, ranks }: Verdict): string {
  const before = `${VERDICT_WORDS[from].words}, ${rankWords(ranks[0])}`
  const after = `${VERDICT_WORDS[to].words}, ${rankWords(ranks[1])}`
  return `${point}, ${label}: ${before} → ${after}`
}

/** "applies → does not apply", or that it says something else. */
export function turnWords({ from, to, words }: Rule): string {
  if (words) return 'applies in both and says something else'
  const said = (outcome: Rule['from']) => (outcome === null ? 'not in the book' : OUTCOME_WORDS[outcome])
  return `${said(from)} → ${said(to)}`
}

/** Where a rule was asked, without the contaminant. */
export function placeWords({ point, equipment }: Rule): string {
  return [point, equipment].filter((part) => part !== '').join(', ') || 'the brief'
}

export const isNothing = ({ rules, verdicts, summary }: Difference): boolean =>
  rules.length === 0 && verdicts.length === 0 && summary === null
