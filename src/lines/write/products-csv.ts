import type { LineProduct } from '../../contract/index.ts'
import { csvCell } from '../../intake/csv-cell.ts'

const COLUMNS = [
  'row',
  'title',
  'line',
  'point',
  'material',
  'shape',
  'lengthMm',
  'faceMm2',
  'placement',
  'askedMm',
  'promisedMm',
  'expectedMm',
  'meets',
  'equipment',
  'build',
  'openingHeightMm',
  'openingWidthMm',
  'kV',
  'mA',
  'frequenciesKHz',
  'left',
  'problem',
] as const

type Row = Partial<Record<(typeof COLUMNS)[number], string | number | null>>

/** First line of the table that comes out; columns carried along stand at its end. */
export const csvHeading = (carried: readonly string[]): string =>
  line([...COLUMNS, ...carried].map((name) => csvCell(name)))

/** A product as rows of a table: one a contaminant, or one that says what is wrong. Nothing in it runs as a formula. */
export function csvRows(product: LineProduct, carried: readonly string[]): string {
  const own = { row: product.row, title: product.title }
  const rows: Row[] = product.ok
    ? product.answers.map((answer) => {
        const machine = product.machines.find(
          (one) => one.point === answer.point && one.equipment === answer.equipment,
        )
        return {
          ...own,
          ...answer,
          promisedMm: upwards(answer.promisedMm),
          expectedMm: upwards(answer.expectedMm),
          left: answer.left.text,
          build: machine?.build ?? null,
          openingHeightMm: machine?.opening?.heightMm ?? null,
          openingWidthMm: machine?.opening?.widthMm ?? null,
          kV: machine?.settings.kV ?? null,
          mA: machine?.settings.mA ?? null,
          frequenciesKHz: machine?.settings.frequenciesKHz.join(' ') ?? null,
        }
      })
    : product.problems.map(({ column, message }) => ({
        ...own,
        problem: column === '' ? message : `${column}: ${message}`,
      }))
  const along = carried.map((name) => product.carried[name] ?? '')
  return rows
    .map((row) => line([...COLUMNS.map((name) => csvCell(row[name])), ...along.map(csvCell)]))
    .join('')
}

const line = (cells: readonly string[]) => `${cells.join(',')}\r\n`

/** To the hundredth of a millimetre, upwards: the table promises no better than was computed. */
const upwards = (mm: number | null) => (mm === null ? null : Math.ceil(mm * 100 - 1e-9) / 100)
