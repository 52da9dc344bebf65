import { isNothing, placeWords, turnWords, verdictWords } from '../../../views/difference/difference-words.ts'
import { nameWords } from '../../advice/say/words.ts'
import type { Brief, Difference } from '../../contract/index.ts'

/** What another rule book changes, for a terminal. */
export function differenceText(brief: Brief, difference: Difference): string {
  const lines = [`From ${difference.from.rules} to ${difference.to.rules}:`]
  if (isNothing(difference)) lines.push('  nothing changes; every rule that spoke still says the same.')
  if (difference.summary)
    lines.push('', `Before: ${difference.summary[0]}`, `After:  ${difference.summary[1]}`)
  if (difference.verdicts.length > 0)
    lines.push('', 'Verdicts and places:', ...difference.verdicts.map((one) => `  ${verdictWords(one)}`))
  if (difference.rules.length > 0) lines.push('', `Rules (${difference.rules.length}):`)
  for (const rule of difference.rules) {
    const about = rule.contaminant === null ? '' : `, ${nameWords(brief, rule.contaminant)}`
    lines.push(`  ${rule.title} [${rule.id}] (${placeWords(rule)}${about}): ${turnWords(rule)}`)
  }
  return `${lines.join('\n')}\n`
}
