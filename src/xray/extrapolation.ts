import type { Point } from '../contract/index.ts'
import { practiceRange } from '../reference/index.ts'
import type { XrayBuild } from './beam/exposure.ts'
import { beamPathMm } from './places/pack-in-beam.ts'

/** What takes a size away from where practice was read. */
export type FarFrom = 'food' | 'depth' | 'machine'

/** How far a size is from where practice was read: in what, and by how much the size to promise is widened. */
export interface Extrapolation {
  readonly by: readonly FarFrom[]
  readonly factor: number
}

const within = (value: number, [least, most]: readonly [number, number]) => value >= least && value <= most

/** Food, depth (mm in the beam) and machine against the packs whose readings set the practice constants. */
export function extrapolationOf(point: Point, build: XrayBuild): Extrapolation {
  const { structures, pathMm, sourceToDetectorMm, beam, factors } = practiceRange
  const near: Readonly<Record<FarFrom, boolean>> = {
    food: structures.includes(point.product.structure),
    depth: within(beamPathMm(point, build.beam), pathMm),
    machine: build.beam === beam && within(build.sourceToDetectorMm, sourceToDetectorMm),
  }
  const by = (['food', 'depth', 'machine'] as const).filter((what) => !near[what])
  return { by, factor: by.reduce((product, what) => product * factors[what], 1) }
}
