import { LEFT_WORDS } from '../../../views/words/left.ts'
import { sizeWords } from '../../../views/words/size.ts'
import { nameWords } from '../../advice/say/words.ts'
import type { Advice, AnswerRow, Brief } from '../../contract/index.ts'
import { textTable } from './text-table.ts'

/** The machine that answers for a row, with its point; none where no machine finds it. */
function byWhat(advice: Advice, { equipment, point }: AnswerRow): string {
  const at = advice.points.find(({ name }) => name === point)
  const label = at?.options.find((option) => option.equipment === equipment)?.label
  return label ? `${label}, ${point}` : 'none'
}

/** The answer for a terminal: the sentence, a line per contaminant, what is left to do, what to ask and test. */
export function answerText(brief: Brief, advice: Advice): string[] {
  const { sentence, rows, ask, test } = advice.answer
  const many = new Set(rows.map(({ line }) => line)).size > 1
  const nameOf = ({ line, contaminant }: AnswerRow) =>
    `${many ? `${line}: ` : ''}${nameWords(brief, contaminant)}`
  const table = textTable(
    ['must not be in it', 'asked', 'safe to promise', 'expected', 'by what, where', 'left to do'],
    rows.map((row) => [
      nameOf(row),
      sizeWords(row.askedMm),
      sizeWords(row.promisedMm),
      sizeWords(row.expectedMm),
      byWhat(advice, row),
      LEFT_WORDS[row.left.kind],
    ]),
  )
  const left = rows.filter(({ left: { kind } }) => kind !== 'done')
  return [
    sentence,
    '',
    table,
    ...left.map((row) => `  ${nameOf(row)}: ${row.left.text} [${row.left.rule}]`),
    ...section('Before you order, ask:', ask),
    ...section('Before you order, test:', test),
  ]
}

const section = (heading: string, said: Advice['answer']['ask']): string[] =>
  said.length === 0 ? [] : ['', heading, ...said.map(({ text, rule }) => `  ${text} [${rule}]`)]
