import type { CoilMachine, Point } from '../../contract/index.ts'
import type { CoilRefusal, Filling } from '../assessment.ts'
import type { Arrangement, Opening } from './opening.ts'
import { squareOfStreamMm } from './stream.ts'

/** Side of the square whose area is that of the circle of diameter 1. */
const SQUARE_OF_CIRCLE = Math.sqrt(Math.PI / 4)

/** The food in the opening, mm. */
export interface Extent {
  /** Across the opening's longer side and along its shorter one. */
  readonly widthMm: number
  readonly heightMm: number
  readonly lengthMm: number
  /** What bounds a piece inside the food: its height, or the bore of pipe or throat. */
  readonly boreMm: number
  readonly filling: Filling
  /** Section the throughput asks for at this speed over the section there is; 0 for packs. */
  readonly streamShare: number
}

/** Extent of the food in the opening, mm, and how full the opening is. */
export function extentAt(
  point: Point,
  arrangement: Arrangement,
  opening: Opening,
  stream: number | null,
  speed: number,
): Extent {
  const shortMm = Math.min(opening.heightMm, opening.widthMm)
  const openingArea = opening.heightMm * opening.widthMm
  if (arrangement === 'tunnel') {
    const round = point.outline === 'cylinder' ? SQUARE_OF_CIRCLE : 1
    const standing = opening.heightMm <= opening.widthMm
    const filling: Filling = {
      heightShare: (standing ? point.heightMm : point.widthMm) / shortMm,
      areaShare: (point.lanes * point.widthMm * point.heightMm) / openingArea,
      basis: 'pack',
      speedMPerS: point.speedMPerMin / 60,
    }
    const widthMm = point.widthMm * round
    const block = standing
      ? { widthMm, heightMm: point.heightMm }
      : { widthMm: point.heightMm, heightMm: widthMm }
    return { ...block, lengthMm: point.lengthMm * round, boreMm: point.heightMm, filling, streamShare: 0 }
  }
  const boreMm = arrangement === 'pipe' && point.pipeDiameterMm !== null ? point.pipeDiameterMm : shortMm
  const boreArea = (Math.PI / 4) * boreMm ** 2
  const share = stream === null ? 1 : stream / boreArea
  const sideMm = squareOfStreamMm(Math.min(1, share) * boreArea)
  const filling: Filling = {
    heightShare: Math.min(1, sideMm / shortMm),
    areaShare: Math.min(1, share),
    basis: stream === null ? 'full, throughput not known' : 'flow',
    speedMPerS: speed,
  }
  return { widthMm: sideMm, heightMm: sideMm, lengthMm: point.lengthMm, boreMm, filling, streamShare: share }
}

/** What cannot pass the opening. */
export function refusalsAt(
  machine: CoilMachine,
  point: Point,
  arrangement: Arrangement,
  opening: Opening,
  streamShare: number,
): CoilRefusal[] {
  const refusals: CoilRefusal[] = []
  const refuse = (id: CoilRefusal['id'], given: number, allowed: number, unit: string) => {
    if (given > allowed) refusals.push({ id, given, allowed, unit })
  }
  if (arrangement === 'tunnel') {
    refuse('too-high', point.heightMm, Math.min(opening.heightMm, machine.maxHeightMm ?? Infinity), 'mm')
    refuse(
      'too-wide',
      point.lanes * point.widthMm,
      Math.min(opening.widthMm, machine.maxWidthMm ?? Infinity),
      'mm',
    )
    return refusals
  }
  if (arrangement === 'pipe' && point.pipeDiameterMm !== null) {
    refuse('too-wide', point.pipeDiameterMm, Math.min(opening.heightMm, opening.widthMm), 'mm')
  }
  if (arrangement === 'free-fall') refuse('over-full', Math.round(streamShare * 100), 100, '% of the section')
  return refusals
}
