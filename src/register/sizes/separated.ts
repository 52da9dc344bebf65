import type { RemovedBySize, Separator } from '../line/separators.ts'
import type { ControlChance } from './control-chance.ts'

/** Sizes at which a device is asked, mm; between them its share runs straight over ln size. */
const SIZES_MM = [0.1, 0.2, 0.35, 0.5, 0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 25] as const

/** Chance that a separator takes a piece out, by the size of its equivalent test piece. */
export interface Separated {
  readonly worst: (sizeMm: number) => number
  readonly best: (sizeMm: number) => number
}

/** Null where the device has no use for the contaminant. */
export function separatedBy(
  removedBySize: RemovedBySize,
  { pointIndex, equipment }: Separator,
  contaminant: number,
): Separated | null {
  const shares = removedBySize(pointIndex, equipment, contaminant, SIZES_MM)
  if (!shares) return null
  const at = (side: 0 | 1) => (sizeMm: number) => {
    const next = SIZES_MM.findIndex((size) => size >= sizeMm)
    if (next === 0) return shares[0]![side]
    if (next < 0) return shares.at(-1)![side]
    const [from, to] = [SIZES_MM[next - 1]!, SIZES_MM[next]!]
    const part = Math.log(sizeMm / from) / Math.log(to / from)
    return shares[next - 1]![side] * (1 - part) + shares[next]![side] * part
  }
  return { worst: at(0), best: at(1) }
}

/** A device as a control in turn: the middle of its range, because its own worst is not the line's worst. */
export const asControl = ({ worst, best }: Separated, workingShare: number): ControlChance => ({
  places: [],
  workingShare,
  removes: (sizeMm) => (worst(sizeMm) + best(sizeMm)) / 2,
})
