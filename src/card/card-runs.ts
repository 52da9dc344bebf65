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

/** A field of a CSV row: quoted where it must be; a cell that a spreadsheet would run as a formula is disarmed. */
function cell(value: string | number | null): string {
  if (value === null) return ''
  const text = typeof value === 'number' ? String(Number(value.toPrecision(6))) : value
  const safe = typeof value === 'string' && /^[=+\-@]/.test(text) ? `'${text}` : text
  return /[",\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe
}

/** Readings of a simulated card as rows of test runs, one a piece; clean packs have an empty material. */
export function runsCsv(card: Card): string {
  const rows = card.machines
    .flatMap((machine) => machine.runs)
    .map((run) => HEADER.map((key) => cell(run[key])).join(','))
  return `${[HEADER.join(','), ...rows].join('\n')}\n`
}
