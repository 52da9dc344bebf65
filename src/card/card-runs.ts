import { csvCell } from '../intake/csv-cell.ts'
import type { Card } from './card.ts'

const HEADER = [
  'equipment',
  'piece',
  'material',
  'shape',
  'sizeMm',
  'lengthMm',
  'faceMm2',
  'placement',
  'position',
  'runs',
  'found',
  'signal',
  'threshold',
  'note',
] as const

/** Readings of a simulated card as rows of test runs, one a piece; clean packs have an empty material. */
export function runsCsv(card: Card): string {
  const rows = card.machines
    .flatMap((machine) => machine.runs)
    .map((run) => HEADER.map((key) => csvCell(run[key])).join(','))
  return `${[HEADER.join(','), ...rows].join('\n')}\n`
}
