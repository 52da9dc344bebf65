import type { DemonstratedRecord } from '../../src/contract/trial-records.ts'

/** "demonstrated 2.89 mm on these 60 packs, 2026-11-27": a size shown is never printed as a predicted one. */
export function shownWords({ sizeMm, packs, date }: DemonstratedRecord): string {
  return `demonstrated ${sizeMm} mm on ${packs} packs${date ? `, ${date}` : ', day not named'}`
}
