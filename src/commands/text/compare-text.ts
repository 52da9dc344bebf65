import { sizeWords } from '../../../views/words/size.ts'
import { ANSWER_WORDS, VERDICT_WORDS } from '../../../views/words/verdict.ts'
import type { Comparison } from '../../compare/comparison.ts'
import type { Finding } from '../../contract/index.ts'
import { textTable } from './text-table.ts'

/** The sentences, the columns, then the questions. */
export function comparisonText(
  comparison: Comparison,
  pieces: readonly string[],
  words: readonly string[],
): string {
  const { sides, differences, questions } = comparison
  const { toAll, toEach, ourselves } = questions
  const rows = [
    ['verdict', ...sides.map(({ option }) => VERDICT_WORDS[option.verdict].words)],
    ...pieces.map((piece, at) => [piece, ...sides.map(({ findings }) => findingText(findings[at] ?? null))]),
    ['cost and effort, 1 to 5', ...sides.map(({ option }) => String(option.burden))],
    ...differences.figures.map((row) => [row.words.toLowerCase(), ...row.cells.map((cell) => cell ?? '–')]),
  ]
  const list = (heading: string, items: readonly { readonly ask: string }[]) =>
    items.length === 0 ? [] : ['', heading, ...items.map(({ ask }) => `- ${ask}`)]
  return [
    ...words,
    '',
    textTable(['sizes in mm: expected / safe to promise', ...sides.map((side) => side.words)], rows),
    ...sides.flatMap((side) =>
      side.claims.length === 0
        ? []
        : ['', `Quoted for ${side.words}:`, ...side.claims.map(({ text }) => `- ${text}`)],
    ),
    ...list('Ask of every machine here:', toAll),
    ...sides.flatMap((side, at) => list(`Ask of ${side.words}:`, toEach[at] ?? [])),
    ...list('Settle ourselves:', ourselves),
  ].join('\n')
}

function findingText(finding: Finding | null): string {
  if (finding === null) return 'not looked for'
  if (finding.expectedMm === null) return 'not found'
  const promised = finding.cautiousMm === null ? 'nothing' : sizeWords(finding.cautiousMm)
  return `${sizeWords(finding.expectedMm)} / ${promised}, ${ANSWER_WORDS[finding.meets].words}`
}
