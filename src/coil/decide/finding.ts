import type { Contaminant, Zone } from '../../contract/index.ts'
import type { CoilFinding } from '../assessment.ts'
import { NEAR_WALL_GAIN } from '../opening/geometry-factor.ts'
import { hasDirection, type Piece } from '../piece/piece.ts'
import { LARGEST_MM } from '../piece/size-grid.ts'
import { cautionRange } from './caution-range.ts'
import { bestMm, bestRangeMm, type Empty, type FindingContext, limitOf } from './finding-context.ts'
import { unsuitableForIron } from './iron-unsuitable.ts'
import { missedAgain } from './last-crossing.ts'
import {
  curveOf,
  LEVELS,
  type Listening,
  largerMm,
  type OrientedCurve,
  orientedCurves,
  weakerOf,
  weakestMm,
} from './reading.ts'

const CURVE_POINTS = 49
const ANGLES = 12

/** Chance of finding at one size in the weaker orientation. */
const chanceOf = (curves: readonly OrientedCurve[], sizeMm: number): number =>
  Math.min(...curves.map(({ curve }) => curve.chanceOf(sizeMm)))

/** Chance against size, equal steps in ln(size) over where it rises; at most up to the limit. */
function chanceCurve(
  curves: readonly OrientedCurve[],
  halfMm: number | null,
  sureMm: number | null,
  limitMm: number,
) {
  const from = Math.min(halfMm === null ? limitMm / 20 : halfMm / 2.5, limitMm / 2)
  const to = Math.min(limitMm, sureMm === null ? limitMm : sureMm * 1.5)
  const sizesMm = Array.from(
    { length: CURVE_POINTS },
    (_, k) => from * (to / from) ** (k / (CURVE_POINTS - 1)),
  )
  return { sizesMm, chance: sizesMm.map((size) => chanceOf(curves, size)) }
}

/** Mean chance over directions at random in space: cos of the angle to the travel is uniform. */
function chanceAnyOrientation(listen: Listening, piece: Piece, sizeMm: number): number {
  let sum = 0
  for (let k = 0; k < ANGLES; k++) {
    const axis = ((k + 0.5) / ANGLES) ** 2
    sum += curveOf(listen, piece, piece.shape.kind === 'flake' ? 1 - axis : axis).chanceOf(sizeMm)
  }
  return sum / ANGLES
}

function zone(name: string, sizes: Zone['sizes'], mustFindMm: number | null, why: string): Zone {
  const sizeMm = sizes.expectedMm
  const short = sizeMm !== null && mustFindMm !== null && sizeMm > mustFindMm
  return {
    name,
    state: sizeMm === null ? 'blind' : short ? 'degraded' : 'findable',
    share: null,
    pathMm: null,
    sizes,
    canLieThere: true,
    settlesThere: false,
    why,
  }
}

/** Where sheet of metal goes around the food; lids, caps and bases only disturb. */
const AROUND = ['wrap', 'sleeve', 'tray', 'wall']

/** Foil around the food, no film: it closes the field, so what an empty opening would find says nothing. */
const isWrappedInFoil = ({ layers }: FindingContext['scene']): boolean =>
  layers.some(({ film, part }) => !film && AROUND.includes(part.place))

/** Sizes and chances of one piece of metal; `listen` is the scene at the frequencies in use. */
export function findingOf(
  context: FindingContext,
  contaminant: Contaminant,
  index: number,
  piece: Piece,
  listen: Listening,
  empty: Empty,
  calculation: string,
): CoilFinding {
  const limitMm = limitOf(context, piece)
  const inEmpty = bestMm(context, piece, empty.usual)
  const curves = orientedCurves(listen, piece)
  const size = (level: number) => weakestMm(curves, level, limitMm)
  const found = size(LEVELS.found)
  const best = found === null && isWrappedInFoil(context.scene) ? null : inEmpty
  const weakest = weakerOf(curves, limitMm)
  const weak = hasDirection(piece.shape) ? weakest.orientation : null
  const windows = missedAgain(weakest.curve, LEVELS.found, limitMm)
  // A ball of iron that is missed again has turned; a flake or a wire that is counts from where it is found for good.
  const turned = windows.length > 0 && piece.metal.ferromagnetic && piece.shape.kind === 'sphere'
  const frequencyUnsuitable =
    turned || unsuitableForIron(context, piece, best === null ? null : found, listen.hearing.frequenciesHz)
  const expectedMm = best === null || frequencyUnsuitable ? null : largerMm(found, best)
  const range = cautionRange(context, piece, listen.hearing.frequenciesHz, expectedMm, weak)
  const { mustFindMm } = contaminant
  const askedMm = mustFindMm ?? expectedMm
  const nearWall = weakestMm(orientedCurves(listen, piece, NEAR_WALL_GAIN), LEVELS.found, limitMm)
  const halfMm = size(LEVELS.half)
  const sureMm = size(LEVELS.sure)
  return {
    contaminant: index,
    answers: true,
    bestMm: best,
    bestRangeMm: best === null ? null : bestRangeMm(context, piece, empty),
    halfMm,
    expectedMm,
    sureMm,
    cautiousMm: range.cautiousMm,
    chanceAtMustFind: mustFindMm === null || mustFindMm > LARGEST_MM ? null : chanceOf(curves, mustFindMm),
    chanceAnyOrientation:
      piece.shape.kind === 'flake' && askedMm !== null && askedMm <= limitMm
        ? chanceAnyOrientation(listen, piece, askedMm)
        : null,
    curve: chanceCurve(curves, halfMm, sureMm, limitMm),
    limitMm,
    weakOrientation: weak,
    orientations: weak
      ? curves.map(({ orientation, curve }) => ({
          orientation,
          bestMm: empty.usual
            .map((hearing) => {
              const dry = { hearing, thresholdZ: context.thresholdZ, spread: 0 }
              const share = orientation === 'along' ? 1 : 0
              return weakestMm([{ orientation, curve: curveOf(dry, piece, share) }], LEVELS.found, limitMm)
            })
            .reduce<number | null>((a, b) => (a === null ? b : b === null ? a : Math.min(a, b)), null),
          expectedMm: weakestMm([{ orientation, curve }], LEVELS.found, limitMm),
        }))
      : [],
    missedAgain: windows,
    floorMm: range.floorMm,
    widest: range.widest,
    zones: [
      zone(
        'centre of the opening',
        { bestMm: best, expectedMm, cautiousMm: range.cautiousMm },
        mustFindMm,
        'the field of the coil is weakest on its axis',
      ),
      zone(
        'near the belt, a wall or the roof',
        {
          bestMm: best,
          expectedMm: expectedMm === null || nearWall === null ? nearWall : Math.min(nearWall, expectedMm),
          cautiousMm: range.cautiousMm,
        },
        mustFindMm,
        'a third stronger coupling at 0.3 of the opening height from the centre',
      ),
    ],
    frequencyUnsuitable,
    calculation,
  }
}
