import { randomBytes } from 'node:crypto'
import type { LineProduct, LinesSummary } from '../../contract/index.ts'
import { type OpenedTable, products, type Workforce } from '../../lines/read-lines.ts'

type Coming = AsyncGenerator<LineProduct, LinesSummary>

/** A table being worked on, by its number. */
export interface Started {
  readonly id: string
  readonly table: Pick<OpenedTable, 'frame' | 'rows'>
  readonly coming: Coming
}

/** Who works tables of products out: this program by itself, or all that share a database (shared-work.ts). */
export interface TableWork {
  /** For a reader who waits. */
  readonly products: (table: OpenedTable) => Coming | Promise<Coming>
  /** For pages, to be looked at later. */
  readonly start: (table: OpenedTable) => Promise<Started>
  /** A table that another program was sent; null where there is none. */
  readonly find?: (id: string) => Promise<Started | null>
}

export const workedHere = (workforce: Workforce): TableWork => ({
  products: (table) => products(table, workforce),
  start: async (table) => ({
    id: randomBytes(12).toString('base64url'),
    table,
    coming: products(table, workforce),
  }),
})
