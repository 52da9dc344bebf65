import type { Point } from '../../contract/index.ts'
import type { CrossedPart, PackInBeam } from '../detector/channels.ts'
import { partAt } from './container.ts'
import { crossed } from './pack-in-beam.ts'
import { type PackPlace, seenPlace, withoutFood } from './place.ts'
import { EDGE_MM } from './shares.ts'
import { THICKENING, THICKENING_WORDS } from './thickening.ts'

/** Slope of the side wall of a tray that nests, degrees from the upright (judgement). */
export const TRAY_DRAFT_DEG = 15

/** Layers a fold adds to the plain one. */
const FOLDED = THICKENING - 1

const withMore = (pack: PackInBeam, more: readonly CrossedPart[]): PackInBeam => ({
  ...pack,
  parts: [...pack.parts, ...more],
})

const cornerShare = ({ widthMm, lengthMm }: Point) => Math.min(1, (4 * EDGE_MM ** 2) / (widthMm * lengthMm))

const rimShare = ({ widthMm, lengthMm }: Point) =>
  Math.min(1, (2 * EDGE_MM * (widthMm + lengthMm)) / (widthMm * lengthMm))

/** Floor, corners and rim of a tray seen from above; from the side the tray is not crossed. */
export function trayPlaces(point: Point, pack: PackInBeam, beam: 'down' | 'side'): PackPlace[] {
  const tray = partAt(point, 'tray')!
  const [corner, rim] = beam === 'side' ? [0, 0] : [cornerShare(point), rimShare(point)]
  const floor = seenPlace('body', 'bottom', 1 - corner - rim, pack, 'middle of the tray')
  if (beam === 'side') return [floor]
  const sloped = 1 / Math.sin((TRAY_DRAFT_DEG * Math.PI) / 180) - 1
  return [
    floor,
    seenPlace('corner', 'bottom', corner, withMore(pack, [crossed(tray, FOLDED)]), THICKENING_WORDS),
    seenPlace(
      'rim',
      'beside',
      rim,
      withMore(pack, [{ ...crossed(tray, 1), mm: tray.mm * sloped }]),
      `the side wall stands ${TRAY_DRAFT_DEG} degrees off the beam (judgement)`,
    ),
  ]
}

/** The middle of a bag and its crimped ends, where no food lies and the film is gathered. */
export function bagPlaces(point: Point, pack: PackInBeam): PackPlace[] {
  const films = point.parts.filter(({ place }) => place === 'wrap' || place === 'sleeve')
  const gathered = [...pack.parts, ...films.map((film) => crossed(film, 2 * FOLDED))]
  return [
    seenPlace('body', 'middle', 1, pack, 'middle of the pack'),
    seenPlace(
      'crimp',
      'beside',
      null,
      withoutFood(pack, gathered),
      `no food lies there; the film ${THICKENING_WORDS}`,
    ),
  ]
}

/** The middle of a carton and its corners, where the flaps fold over each other. */
export function cartonPlaces(point: Point, pack: PackInBeam): PackPlace[] {
  const boards = point.parts.filter(({ place }) => place === 'wrap' || place === 'sleeve')
  const corner = cornerShare(point)
  const folded = withMore(
    pack,
    boards.map((board) => crossed(board, 2 * FOLDED)),
  )
  return [
    seenPlace('body', 'middle', 1 - corner, pack, 'middle of the pack'),
    seenPlace('corner', 'beside', corner, folded, `flaps ${THICKENING_WORDS}`),
  ]
}
