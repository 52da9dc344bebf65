import type { ControlChance } from '../sizes/control-chance.ts'
import { type FragmentSizes, overPieces } from '../sizes/fragment-sizes.ts'
import { asControl, type Separated, separatedBy } from '../sizes/separated.ts'
import type { Line } from './controls-in-place.ts'
import type { RemovedBySize, Separator } from './separators.ts'

/** A device that takes out fewer of all that arrives, at its best, is no control of it (judgement, no source). */
const WORTH_A_LINE = 0.01

/** Everything that takes pieces out of a line, in turn: at each point the devices first, then its detector. */
export interface Station {
  readonly pointIndex: number
  readonly point: string
  readonly chance: ControlChance
  /** Number of the detector among the controls of the line; null for a device. */
  readonly control: number | null
  readonly separator: { readonly device: Separator; readonly separated: Separated } | null
}

/** The stations of a line for one contaminant; a device without a use for it is left out. */
export function stationsOf(
  line: Line,
  contaminant: number,
  chances: readonly ControlChance[],
  workingShareAt: (pointIndex: number) => number,
  removedBySize: RemovedBySize,
  sizes: FragmentSizes,
): Station[] {
  return line.points.flatMap((pointIndex) => [
    ...line.separators
      .filter((device) => device.pointIndex === pointIndex)
      .flatMap((device): Station[] => {
        const separated = separatedBy(removedBySize, device, contaminant)
        if (!separated || overPieces(sizes, 0, separated.best) < WORTH_A_LINE) return []
        const { point } = device
        const chance = asControl(separated, workingShareAt(pointIndex))
        return [{ pointIndex, point, chance, control: null, separator: { device, separated } }]
      }),
    ...line.controls.flatMap(({ point, ...control }, at): Station[] =>
      control.pointIndex === pointIndex
        ? [{ pointIndex, point, chance: chances[at]!, control: at, separator: null }]
        : [],
    ),
  ])
}
