import {
  childPath,
  comparisonWords,
  GROUP_WORDS,
  hereWords,
  nodeAt,
  settlesWords,
  standingWords,
} from '../../../views/trail/leaf-words.ts'
import { TRUTH_WORDS } from '../../../views/words/verdict.ts'
import type { ConditionTrace, RuleTrace } from '../../contract/index.ts'

/** A leaf in one line: truth, comparison, value, origin and margin, and its calculation to walk on from. */
export function leafText(node: ConditionTrace): string {
  const standing = standingWords(node)
  const trail = node.calculation ? ` [trail ${node.calculation}]` : ''
  return `${TRUTH_WORDS[node.truth]}: ${comparisonWords(node)}; here ${hereWords(node)}${standing ? ` (${standing})` : ''}${trail}`
}

/** The shortest set of comparisons that settles a rule, one line each. */
export const shortWhy = (rule: RuleTrace): string[] =>
  rule.decisive.flatMap((path) => {
    const node = nodeAt(rule.conditions, path)
    return node ? [leafText(node)] : []
  })

/** The whole evaluated tree, indented; what settles it says so. */
export function treeText(rule: RuleTrace): string[] {
  const lines = (node: ConditionTrace, path: string, indent: string): string[] => {
    if (node.kind === 'leaf')
      return [`${indent}${leafText(node)}${rule.decisive.includes(path) ? ` — ${settlesWords(node)}` : ''}`]
    const head = `${indent}${TRUTH_WORDS[node.truth]}: ${GROUP_WORDS[node.kind]}`
    return [
      head,
      ...(node.children ?? []).flatMap((child, at) => lines(child, childPath(path, at), `${indent}  `)),
    ]
  }
  return lines(rule.conditions, '', '')
}
