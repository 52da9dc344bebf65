import { nameWords } from '../../advice/say/words.ts'
import type { Advice, Brief } from '../../contract/index.ts'
import { reasonText } from './reason-text.ts'
import { textTable } from './text-table.ts'

type Removals = Advice['points'][number]['removals']

const percent = (share: number) => `${Math.round(100 * share)}`

/** What takes a share out at a point before a detector sees it, with its conditions; empty where nothing does. */
export function removalText(brief: Brief, advice: Advice, removals: Removals, reasons: boolean): string[] {
  if (removals.length === 0) return []
  const table = textTable(
    ['upstream', 'contaminant', 'share removed, %', 'ceiling, %', 'calculation'],
    removals.map(({ equipment, contaminant, shareRemoved, ceiling, unsuitable, calculation }) => [
      equipment,
      nameWords(brief, contaminant),
      unsuitable === '' ? `${percent(shareRemoved[0])} to ${percent(shareRemoved[1])}` : 'not suitable',
      unsuitable === '' ? percent(ceiling) : '–',
      calculation,
    ]),
  )
  const notes = removals.map(
    ({ equipment, unsuitable, condition }) => `  ${equipment}: ${unsuitable || condition}`,
  )
  const rules = new Map(advice.trace.rules.map((rule) => [rule.key, rule]))
  const said = new Map(removals.flatMap((row) => row.reasons.map((one) => [one.trace, one])))
  return [
    '',
    'Upstream removal, a share per run and never ranked against a detector:',
    table,
    ...new Set(notes),
    ...(reasons
      ? [...said.values()].map((reason) => reasonText(brief, reason, rules.get(reason.trace), false))
      : []),
  ]
}
