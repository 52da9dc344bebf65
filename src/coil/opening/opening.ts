import type { CoilMachine, Point } from '../../contract/index.ts'
import type { FieldOpening } from './noise.ts'

export type Arrangement = 'tunnel' | 'free-fall' | 'pipe'

/** The opening of the coil and how it came about. */
export interface Opening {
  readonly heightMm: number
  readonly widthMm: number
  readonly origin: 'machine' | 'point' | 'pack' | 'pipe' | 'flow'
}

/** Clearance around the pack, smallest opening and step of sizes, mm (common practice, no source). */
const CLEARANCE = { heightMm: 40, widthMm: 50, leastHeightMm: 75, leastWidthMm: 150, stepMm: 25 } as const
/** Wall of the pipe inside a pipe coil, mm each side (assumption). */
const PIPE_WALL_MM = 10
/** A falling stream fills at most this share of a throat that is chosen for it (assumption). */
const CHOSEN_FILLING = 0.3

const upToStep = (mm: number): number => Math.ceil(mm / CLEARANCE.stepMm) * CLEARANCE.stepMm

type Through = Pick<Point, 'heightMm' | 'widthMm' | 'lanes'> &
  Partial<Pick<Point, 'largestHeightMm' | 'largestWidthMm'>>

/** Smallest usual opening that lets the pack, and the largest of the line, through with clearance; lanes run side by side. */
export function fittingOpening(point: Through): Opening {
  const heightMm = Math.max(point.heightMm, point.largestHeightMm ?? 0)
  const widthMm = Math.max(point.lanes * point.widthMm, point.largestWidthMm ?? 0)
  return {
    heightMm: Math.max(CLEARANCE.leastHeightMm, upToStep(heightMm + CLEARANCE.heightMm)),
    widthMm: Math.max(CLEARANCE.leastWidthMm, upToStep(widthMm + point.lanes * CLEARANCE.widthMm)),
    origin: 'pack',
  }
}

/** How the coil stands at this point: as the machine says, else as the stage asks for. */
export function arrangementOf(
  machine: Pick<CoilMachine, 'arrangement'>,
  point: Pick<Point, 'stage'>,
): Arrangement {
  if (machine.arrangement) return machine.arrangement
  if (point.stage === 'pumped') return 'pipe'
  return point.stage === 'free-fall' ? 'free-fall' : 'tunnel'
}

/** Smallest throat (steps of 25 mm from 75) that a stream of this section fills to no more than 30 %. */
function throatForMm(streamAreaMm2: number): number {
  const least = Math.sqrt((4 * streamAreaMm2) / (Math.PI * CHOSEN_FILLING))
  return Math.max(CLEARANCE.leastHeightMm, upToStep(least))
}

/**
 * Opening of the coil: the machine's, else the point's; else for a pipe the pipe and its wall, for a
 * falling stream the throat or one chosen for the stream (`streamAreaMm2`, null where not known), for packs
 * the smallest usual one that fits.
 */
export function chooseOpening(
  machine: Pick<CoilMachine, 'arrangement' | 'apertureHeightMm' | 'apertureWidthMm'>,
  point: Point,
  streamAreaMm2: number | null,
): Opening {
  const arrangement = arrangementOf(machine, point)
  const fallback = (): Opening => {
    if (arrangement === 'tunnel') return fittingOpening(point)
    const diameterMm = point.pipeDiameterMm ?? Math.max(point.heightMm, point.widthMm)
    if (arrangement === 'pipe') {
      const outerMm = diameterMm + 2 * PIPE_WALL_MM
      return { heightMm: outerMm, widthMm: outerMm, origin: 'pipe' }
    }
    if (point.pipeDiameterMm === null && streamAreaMm2 !== null) {
      const throatMm = throatForMm(streamAreaMm2)
      return { heightMm: throatMm, widthMm: throatMm, origin: 'flow' }
    }
    return { heightMm: diameterMm, widthMm: diameterMm, origin: 'pipe' }
  }
  const from = (heightMm: number | null | undefined, widthMm: number | null | undefined) =>
    heightMm == null && widthMm == null ? null : { heightMm, widthMm }
  const own = from(machine.apertureHeightMm, machine.apertureWidthMm)
  const given = own ?? from(point.apertureHeightMm, point.apertureWidthMm)
  if (!given) return fallback()
  const rest = fallback()
  const round = arrangement !== 'tunnel'
  return {
    heightMm: given.heightMm ?? (round ? given.widthMm! : rest.heightMm),
    widthMm: given.widthMm ?? (round ? given.heightMm! : rest.widthMm),
    origin: own ? 'machine' : 'point',
  }
}

/** The opening as the field sees it, m: h is the shorter side. */
export const fieldOpening = (opening: Pick<Opening, 'heightMm' | 'widthMm'>): FieldOpening => ({
  heightM: Math.min(opening.heightMm, opening.widthMm) / 1000,
  widthM: Math.max(opening.heightMm, opening.widthMm) / 1000,
})
