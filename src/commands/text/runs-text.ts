import { groupTitle, rateWords } from '../../../views/runs/run-words.ts'
import { sizeWords } from '../../../views/words/size.ts'
import type { RunGroup, RunsAnswer } from '../../contract/index.ts'
import { textTable } from './text-table.ts'

const size = (mm: number | null) => (mm === null ? '–' : sizeWords(mm))

function groupText(group: RunGroup): string {
  const head = `${groupTitle(group)}: ${group.pieces} pieces`
  const sizes = textTable(
    ['size, mm', 'pieces', 'found', 'at least, 95 % sure'],
    group.exact.map((row) => [
      String(row.sizeMm),
      String(row.runs),
      String(row.found),
      `${(row.lower95 * 100).toFixed(1)} %`,
    ]),
  )
  const curve = group.fit
    ? `  50 % size ${size(group.a50)} mm, 90 % size ${size(group.a90)} mm; 90 % size, 95 % sure: ${size(group.a9095)} mm (plain profile ${size(group.a9095Plain)}, delta ${size(group.a9095Delta)})`
    : ''
  const signal = group.signal
    ? `  by the signal: 90 % size ${size(group.signal.a90)} mm, 95 % sure ${size(group.signal.a9095)} mm (${group.signal.pieces} readings, ${group.signal.censored} without a number)`
    : ''
  const card = group.card
    ? `  found without a miss down to ${group.card.downToMm} mm: the size lies between ${group.card.interval[0] ?? 0} and ${group.card.downToMm} mm`
    : ''
  return [head, `  ${group.words}`, curve, signal, card, sizes].filter(Boolean).join('\n')
}

/** A trial for a terminal. */
export function runsText(answer: RunsAnswer): string {
  const clean = answer.clean.map(({ equipment, setting, run }) => {
    const at = setting ? ` at ${setting}` : ''
    return `${equipment}${at}: ${run.rejects} of ${run.packs} clean packs rejected, ${rateWords(run)}`
  })
  const paired = answer.paired.map(
    (pair) =>
      `${pair.first} and ${pair.second} on the same packs: both ${pair.both}, only ${pair.first} ${pair.onlyFirst}, only ${pair.second} ${pair.onlySecond}, neither ${pair.neither}: ${pair.words}`,
  )
  const predicted = (answer.prediction ?? []).map(
    ({ group, words }) => `${groupTitle(answer.groups[group]!)}: ${words}`,
  )
  const parts: (readonly [string, readonly string[]])[] = [
    ['Missing:', answer.missing],
    ['Clean packs:', clean],
    ['Same packs on two machines:', paired],
    ['Against the prediction:', predicted],
  ]
  const sections = parts.flatMap(([title, lines]) =>
    lines.length > 0 ? [`${title}\n${lines.map((line) => `  ${line}`).join('\n')}`] : [],
  )
  return `${[...answer.groups.map(groupText), ...sections].join('\n\n')}\n`
}
