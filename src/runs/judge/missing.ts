import type { RunGroup, RunRow } from '../../contract/index.ts'
import { rejectedCarriers } from './clean-run.ts'

const listed = (words: readonly string[]) => [...new Set(words)].sort().join(', ')

/** What a trial still needs before it shows anything, in sentences. */
export function missingOf(rows: readonly RunRow[], groups: readonly RunGroup[]): string[] {
  const bare = groups.filter(({ clean, simulated }) => !clean && !simulated)
  const unset = groups.filter(({ setting, simulated }) => setting === '' && !simulated)
  const undated = rows.some(({ date, note }) => !date && !note?.startsWith('simulated'))
  const carriers = rejectedCarriers(rows)
  const places = groups.filter(({ position, simulated }) => position === '' && !simulated)
  return [
    bare.length > 0
      ? `A clean run on ${listed(bare.map(({ equipment }) => equipment))} at the same setting: packs known to be good, none of them those it was taught on. Rows with the material empty.`
      : '',
    carriers.length > 0
      ? `Packs ${listed(carriers)} were rejected clean and carried pieces afterwards: a find there may be the pack. Run those pieces in other packs.`
      : '',
    unset.length > 0 ? 'The setting or recipe of the machine: what is shown holds at that setting only.' : '',
    places.length > 0
      ? 'The place of the piece in the pack: what is shown holds in that place, and the weakest place decides.'
      : '',
    undated ? 'The day of the trial.' : '',
  ].filter(Boolean)
}
