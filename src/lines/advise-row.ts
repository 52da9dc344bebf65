import type { AdviseOptions } from '../advise.ts'
import type { Advice, Brief, LineProduct, Versions } from '../contract/index.ts'
import { inShort } from './in-short.ts'
import type { Column } from './read/heading.ts'
import { carriedOf, readProduct, type TableFrame } from './read/product-row.ts'
import type { TableRow } from './read/records.ts'
import type { Largest } from './survey.ts'

/** Rows to work out, with what they share: plain values, so that they travel to a worker. */
export interface Batch {
  readonly frame: TableFrame
  readonly largest: readonly Largest[]
  readonly rows: readonly TableRow[]
}

/** A batch worked out: a product a row, in the same order. */
export interface Worked {
  readonly products: readonly LineProduct[]
  readonly versions: Versions | null
}

export type AdviseOn = (brief: Brief, options?: AdviseOptions) => Promise<Advice>

/** The searches and records of one advice are left out: a table asks what each product needs, not what would change it. */
const IN_SHORT = { withoutChanges: true, withoutMissing: true, withoutRecords: true }

/** Works a batch out, row by row; a row that is wrong says why and stops no other. */
export async function adviseBatch(advise: AdviseOn, { frame, largest, rows }: Batch): Promise<Worked> {
  const products: LineProduct[] = []
  let versions: Versions | null = null
  for (const row of rows) {
    const read = 'cells' in row ? readProduct(frame, row.cells, largest) : refusedRow(row.because)
    const place = placeOf(frame.columns, row)
    if (!read.ok) {
      products.push({ ...place, ok: false, problems: [...read.problems] })
      continue
    }
    const advice = await advise(read.brief, IN_SHORT)
    versions = advice.versions
    products.push({ ...place, title: read.brief.title, ok: true, ...inShort(read.brief, advice) })
  }
  return { products, versions }
}

const refusedRow = (because: string) => ({ ok: false as const, problems: [{ column: '', message: because }] })

/** Where a row stands and what it is called, as far as its cells say. */
export function placeOf(columns: readonly Column[], row: TableRow) {
  const cells = 'cells' in row ? row.cells : []
  const title = cells[columns.findIndex(({ path }) => path === 'title')] ?? ''
  return { row: row.row, title: title.slice(0, 200), carried: carriedOf(columns, cells) }
}
