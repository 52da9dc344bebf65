import { sizeWords } from '../../../views/words/size.ts'
import { VERDICT_WORDS } from '../../../views/words/verdict.ts'
import { nameWords } from '../../advice/say/words.ts'
import type { Advice, Brief, Option } from '../../contract/index.ts'
import {
  changesText,
  closeCallText,
  missingText,
  quotesText,
  ratherText,
  togetherText,
} from './advice-sections.ts'
import { answerText } from './answer-text.ts'
import { pointReasonsText, reasonsText } from './reason-text.ts'
import { removalText } from './removal-text.ts'
import { textTable } from './text-table.ts'

function optionText(brief: Brief, option: Option): string {
  const setting = option.settings.kV === null ? '' : `, ${option.settings.kV} kV ${option.settings.mA} mA`
  const rank = option.rank === null ? 'not ranked' : `${option.rank}.`
  const head = `${rank} ${option.label} [${option.equipment}] — ${VERDICT_WORDS[option.verdict].words} (cost and effort ${option.burden}${setting})`
  const table = textTable(
    [
      'contaminant',
      'must find',
      'best possible',
      'expected',
      'safe to promise',
      'chance',
      'meets',
      'calculation',
    ],
    option.findings.map((f) => [
      `${nameWords(brief, f.contaminant)}, ${f.placement}`,
      sizeWords(f.mustFindMm),
      sizeWords(f.bestMm),
      sizeWords(f.expectedMm),
      sizeWords(f.cautiousMm),
      f.chanceAtMustFind === null ? '–' : f.chanceAtMustFind.toFixed(3),
      f.meets,
      f.calculation,
    ]),
  )
  const zones = option.findings.flatMap((f) => {
    const weak = f.zones.filter((z) => z.canLieThere && z.state !== 'findable')
    return weak.length === 0 || f.bestMm === null
      ? []
      : [
          `weak for ${nameWords(brief, f.contaminant)}: ${weak.map((z) => `${z.name} (${z.state})`).join(', ')}`,
        ]
  })
  const cannot = option.findings
    .filter((f) => f.meets === 'cannot' || f.expectedMm === null)
    .map((f) => `${nameWords(brief, f.contaminant)}: ${f.note}`)
  return [head, option.because, table, ...cannot, ...new Set(zones)].join('\n')
}

/** What is shown beside the answer and the tables. */
export interface Shown {
  readonly reasons?: boolean
  /** Under each reason its whole evaluated condition. */
  readonly tree?: boolean
}

/** Advice for a terminal: the answer, one table per machine and point, on request the reasons. */
export function adviceText(brief: Brief, advice: Advice, shown: Shown = {}): string {
  const parts: string[] = [brief.title, '', ...answerText(brief, advice)]
  for (const point of advice.points) {
    parts.push('', `== ${point.name}`)
    if (shown.reasons) parts.push(...pointReasonsText(brief, advice, point.reasons, shown.tree ?? false))
    for (const option of point.options) {
      parts.push('', optionText(brief, option))
      if (shown.reasons) parts.push('', reasonsText(brief, advice, option, shown.tree ?? false))
    }
    if (point.options.length === 0) parts.push('', 'No machine compared here can stand at this point.')
    parts.push(...removalText(brief, advice, point.removals, shown.reasons ?? false))
  }
  parts.push(
    '',
    ...togetherText(brief, advice),
    ...closeCallText(advice),
    ...(shown.reasons ? ratherText(advice) : []),
    ...changesText(advice),
    ...quotesText(advice),
    ...missingText(advice),
  )
  parts.push('', 'Assumed:')
  for (const a of advice.assumed) {
    const range = a.range ? ` (${a.range.map((v) => Number(v.toPrecision(3))).join(' to ')})` : ''
    parts.push(`  ${a.label} [${a.path}] = ${a.value}${range}: ${a.because}`)
  }
  parts.push('', 'Cautions:')
  const rules = new Set(advice.trace.rules.map(({ id }) => id))
  for (const { text, id } of advice.cautions) parts.push(`  ${text}${rules.has(id) ? ` [${id}]` : ''}`)
  parts.push(
    '',
    'Sizes are findable sizes in mm (the trade says sensitivity): chance of finding 0.90 at the false rejects asked for.',
    'Expected sizes rest on practice constants that are provisional.',
    'How a number comes about: --trail with its calculation; why a rule spoke or did not: --rule with its name in [ ].',
    `gritwise ${advice.versions.gritwise}, rules ${advice.versions.rules}, reference ${advice.versions.reference}`,
  )
  return `${parts.join('\n')}\n`
}
