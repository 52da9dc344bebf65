import { buildWords, lineName, metWords, packWords, setWords } from '../../../views/lines/line-words.ts'
import { pieceShort } from '../../../views/words/contaminant.ts'
import { sizeWords } from '../../../views/words/size.ts'
import type { LinesSummary, LineTogether } from '../../contract/index.ts'
import { materialNames } from './names.ts'
import { textTable } from './text-table.ts'

/** What the products of each line have in common, for a terminal. */
export function linesText({ rows, bad, lines, moreLines }: LinesSummary): string {
  const read = `${rows} product${rows === 1 ? '' : 's'} read${bad > 0 ? `, ${bad} with problems (column problem of the table)` : ''}`
  const more = moreLines > 0 ? [`${moreLines} more lines are worked out and not summed up.`] : []
  return `${[read, ...lines.map(lineText), ...more].join('\n\n')}\n`
}

function lineText(line: LineTogether): string {
  const worst = line.worst.map((one) => [
    pieceShort(one, materialNames),
    sizeWords(one.askedMm),
    sizeWords(one.promisedMm),
    sizeWords(one.expectedMm),
    `${one.title} (row ${one.row})`,
    one.asked === 0 ? '–' : `${one.met} of ${one.asked}`,
  ])
  const machines = line.machines.map((one) => [
    `${one.label}, ${one.point}`,
    buildWords(one),
    one.kV ? `${one.kV.map((kV) => kV.toFixed(0)).join(' to ')} kV` : '–',
    metWords(one),
  ])
  return [
    `${lineName(line.line)}: ${line.products} product${line.products === 1 ? '' : 's'}`,
    setWords(line),
    ...line.packs.map((pack) => `Largest pack, ${packWords(pack)}`),
    '',
    textTable(['worst product', 'asked', 'safe to promise', 'expected', 'product', 'met in'], worst),
    '',
    textTable(['machine', 'takes every pack', 'tube', 'meets all asked in'], machines),
  ].join('\n')
}
