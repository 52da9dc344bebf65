import { outcomeWords, ruleLines, sideWords } from '../../../views/rather/contrast-words.ts'
import { VERDICT_WORDS } from '../../../views/words/verdict.ts'
import { nameWords } from '../../advice/say/words.ts'
import type { Brief, Contrast, Option } from '../../contract/index.ts'
import { textTable } from './text-table.ts'

/** Two machines side by side: what puts one before the other, and only what differs. */
export function contrastText(
  brief: Brief,
  point: string,
  contrast: Contrast,
  [first, second]: readonly [Option, Option],
): string {
  const pieces = (contaminants: readonly number[]) => contaminants.map((c) => nameWords(brief, c)).join('; ')
  const rows: string[][] = []
  if (contrast.verdict) rows.push(['verdict', ...contrast.verdict.map((v) => VERDICT_WORDS[v].words)])
  if (contrast.burden) rows.push(['burden', ...contrast.burden.map(String)])
  for (const size of contrast.sizes)
    rows.push([
      `${pieces([size.contaminant])}: expected / safe to promise`,
      sideWords(size, 0),
      sideWords(size, 1),
    ])
  for (const { title, rule, contaminants, outcomes } of ruleLines(contrast.rules)) {
    const about = contaminants.length > 0 ? ` (${pieces(contaminants)})` : ''
    rows.push([`${title} [${rule}]${about}`, ...outcomes.map(outcomeWords)])
  }
  const table = rows.length > 0 ? textTable(['what', first.label, second.label], rows) : 'Nothing differs.'
  return `${point}, two machines: ${first.label}, ${second.label}\n${contrast.because}\n\n${table}\n`
}
