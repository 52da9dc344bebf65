import type { CleanRun, RunRow } from '../../contract/index.ts'
import { lowerBound, upperBound } from '../../numerics/binomial.ts'

/** Clean packs of one machine at one setting, with exact one-sided 95 % bounds on its false rejects; null: none. */
export function cleanRunOf(rows: readonly RunRow[]): CleanRun | null {
  const packs = rows.reduce((sum, { runs }) => sum + runs, 0)
  if (packs === 0) return null
  const rejects = rows.reduce((sum, { found }) => sum + found, 0)
  return {
    packs,
    rejects,
    rate: rejects / packs,
    low: lowerBound(rejects, packs, 0.95),
    high: upperBound(rejects, packs, 0.95),
  }
}

/** Named packs that were rejected while clean and then carried a piece: what found them is not the piece. */
export function rejectedCarriers(rows: readonly RunRow[]): string[] {
  const rejected = new Set(rows.filter((r) => r.material === '' && r.found > 0 && r.pack).map((r) => r.pack!))
  return [...rejected].filter((pack) => rows.some((row) => row.material !== '' && row.pack === pack))
}

const settingKey = ({ equipment, setting }: RunRow) => JSON.stringify([equipment, setting ?? ''])

/** Clean packs by machine and setting. */
export class CleanPacks {
  readonly #rows = new Map<string, RunRow[]>()

  constructor(rows: readonly RunRow[]) {
    for (const row of rows) {
      if (row.material !== '') continue
      const there = this.#rows.get(settingKey(row))
      if (there) there.push(row)
      else this.#rows.set(settingKey(row), [row])
    }
  }

  /** Those run at the machine and setting of a piece. */
  beside(piece: RunRow): readonly RunRow[] {
    return this.#rows.get(settingKey(piece)) ?? []
  }

  all(): readonly (readonly RunRow[])[] {
    return [...this.#rows.values()]
  }
}
