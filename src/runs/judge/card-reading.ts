import type { RunGroup } from '../../contract/index.ts'
import type { SizeTally } from './units.ts'

/**
 * "Found down to 2 mm" as what it is: the size lies between the next smaller size tried (null: none was tried) and
 * 2 mm. Null where the largest size was missed.
 */
export function cardReading(tallies: readonly SizeTally[]): RunGroup['card'] {
  let down = -1
  for (let i = tallies.length - 1; i >= 0; i--) {
    if (tallies[i]!.foundAlways < tallies[i]!.units) break
    down = i
  }
  if (down < 0) return null
  const downToMm = tallies[down]!.sizeMm
  return { downToMm, interval: [tallies[down - 1]?.sizeMm ?? null, downToMm] }
}
