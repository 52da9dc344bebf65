import { EVIDENCE_WORDS } from '../../../views/words/evidence.ts'
import { OUTCOME_WORDS } from '../../../views/words/outcome.ts'
import { VERDICT_WORDS } from '../../../views/words/verdict.ts'
import { nameWords } from '../../advice/say/words.ts'
import type { Advice, Brief, Option, Reason, RuleTrace } from '../../contract/index.ts'
import { shortWhy, treeText } from './condition-text.ts'

const about = (brief: Brief, contaminant: number | null) =>
  contaminant === null ? '' : ` [${nameWords(brief, contaminant)}]`

/** One reason: what it says, the shortest set that settles it, its ground, exception, rule and sources. */
export function reasonText(brief: Brief, reason: Reason, rule: RuleTrace | undefined, tree: boolean): string {
  const why = rule ? shortWhy(rule).map((line) => `      ${line}`) : []
  const whole = rule && tree ? ['      whole:', ...treeText(rule).map((line) => `        ${line}`)] : []
  return [
    `  ${reason.type}${about(brief, reason.contaminant)}: ${reason.text}${reason.decisive ? ' This decides the verdict.' : ''}`,
    ...why,
    ...whole,
    `      because: ${reason.because}`,
    `      except: ${reason.exception}`,
    `      rule ${reason.rule} (${EVIDENCE_WORDS[reason.evidence]}, book ${reason.book}); sources: ${reason.sources.join(', ')}`,
  ].join('\n')
}

/** Why and why not of one option: the shortest sufficient sets, on request the whole trees. */
export function reasonsText(brief: Brief, advice: Advice, option: Option, tree: boolean): string {
  const rules = new Map(advice.trace.rules.map((rule) => [rule.key, rule]))
  const whyNot = option.whyNot.map((w) => `  why not: ${w.text}${w.kind === 'rule' ? ` [${w.rule}]` : ''}`)
  const reasons = option.reasons.map((r) => reasonText(brief, r, rules.get(r.trace), tree))
  const said = reasons.length > 0 ? reasons : ['  no rule applies']
  const head = `Reasons for ${option.label} (${VERDICT_WORDS[option.verdict].words}):`
  return [head, ...whyNot, ...said].join('\n')
}

/** What the rules ask of a point, whichever machine stands there. */
export function pointReasonsText(
  brief: Brief,
  advice: Advice,
  reasons: readonly Reason[],
  tree: boolean,
): string[] {
  if (reasons.length === 0) return []
  const rules = new Map(advice.trace.rules.map((rule) => [rule.key, rule]))
  const said = reasons.map((reason) => reasonText(brief, reason, rules.get(reason.trace), tree))
  return ['', 'Whichever machine stands here:', ...said]
}

/** What a rule says where it applies, why, except when, and its sources in full; empty where it is silent. */
function saidText({ points, cautions, trace }: Advice, id: string): string[] {
  const rows = points.flatMap((point) => [point, ...point.options, ...point.removals])
  const reason = rows.flatMap(({ reasons }) => reasons).find(({ rule }) => rule === id)
  const caution = cautions.find((one) => one.id === id)
  const sources = reason?.sources ?? caution?.sources ?? []
  return [
    ...(caution ? [caution.text] : reason ? [reason.text] : []),
    ...(reason ? [`because: ${reason.because}`, `except: ${reason.exception}`] : []),
    ...sources.map((source) => {
      const known = trace.sources.find((one) => one.id === source)
      return `source ${source}: ${known ? `${known.text} (${known.mark})` : ''}`
    }),
  ]
}

/** One rule wherever it was asked: what it says, its outcome and its whole tree. null: never asked. */
export function ruleText(brief: Brief, advice: Advice, id: string): string | null {
  const asked = advice.trace.rules.filter((rule) => rule.id === id)
  if (asked.length === 0) return null
  const parts = asked.map((rule) => {
    const where = [rule.point, rule.equipment].filter(Boolean).join(', ') || 'the brief'
    const head = `${where}${about(brief, rule.contaminant)}: ${OUTCOME_WORDS[rule.outcome]}  (${rule.key})`
    return [head, ...treeText(rule).map((line) => `  ${line}`)].join('\n')
  })
  const head = `${asked[0]!.title} [${id}], book ${asked[0]!.book}`
  return `${[head, ...saidText(advice, id)].join('\n')}\n\n${parts.join('\n\n')}\n`
}
