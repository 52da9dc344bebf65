import type { MetalPicture } from '../../../views/trade-offs/metal-props.ts'
import { measureWords, type Names, pieceWords } from '../../../views/words/contaminant.ts'
import { openingMap } from '../../coil/opening/opening-map.ts'
import { hasDirection, pieceOf } from '../../coil/piece/piece.ts'
import type { Brief, CoilMachine, Contaminant } from '../../contract/index.ts'
import type { InputId } from '../../trade-offs/input.ts'
import { knownInput } from '../../trade-offs/inputs.ts'
import { metalSetup } from '../../trade-offs/metal-setup.ts'
import { responsePlane } from '../../trade-offs/response-plane.ts'
import { sizeAgainst } from '../../trade-offs/size-against.ts'
import { stepsBetween } from '../../trade-offs/steps.ts'
import { turnedPiece } from '../../trade-offs/turned-piece.ts'

const MOVED: readonly InputId[] = ['frequency', 'opening', 'conductivity', 'temperature']
/** Values along a curve. */
const STEPS = 11
const PLANE_KHZ = [10, 1000] as const
const PLANE_STEPS = 21
const ANGLES_DEG = [0, 15, 30, 45, 60, 75, 90]
/** Where the opening is sampled, as shares from its centre; the loop itself is kept off. */
const ACROSS = [-0.4, -0.2, 0, 0.2, 0.4]
const UP = [0.4, 0.2, 0, -0.2, -0.4]
/** Wire that stands for a ball where something is to be turned, mm long. */
const WIRE_LENGTH_MM = 10
/** Size at which responses are shown where the brief asks for none and none is expected, mm. */
const SHOWN_MM = 2

const CONDUCTIVITY_WORDS: Readonly<Record<string, string>> = {
  entered: 'as the brief gives it',
  dry: 'a dry food',
  thawed: 'worked out for its temperature and salt',
  'partly-frozen': 'partly frozen',
  frozen: 'frozen through',
}

const asWire = (contaminant: Contaminant): Contaminant => ({
  ...contaminant,
  shape: 'wire',
  lengthMm: WIRE_LENGTH_MM,
  faceMm2: null,
})

/** All pictures of one metal detector and one metal of the brief; null where the contaminant is no metal. */
export function metalPicture(
  brief: Brief,
  pointIndex: number,
  machine: CoilMachine,
  contaminantIndex: number,
  angleDeg: number,
  names: Names,
): MetalPicture | null {
  const setup = metalSetup(brief, pointIndex, machine, contaminantIndex)
  if (!setup) return null
  const { assessment, contaminant, finding, piece, scene, listening } = setup
  const point = brief.points[pointIndex]!
  const shownMm = contaminant.mustFindMm ?? finding.expectedMm ?? SHOWN_MM
  const turnedContaminant = hasDirection(piece.shape) ? contaminant : asWire(contaminant)
  const turned = (angles: readonly number[]) =>
    turnedPiece(
      listening,
      hasDirection(piece.shape) ? piece : pieceOf(turnedContaminant)!,
      finding.limitMm,
      shownMm,
      angles,
    )
  const { opening } = assessment
  const upright = opening.heightMm > opening.widthMm
  const places = openingMap(scene.opening, ACROSS, UP).map((place) =>
    upright ? { ...place, across: place.up, up: place.across } : place,
  )
  return {
    piece: pieceWords(contaminant, names),
    measure: measureWords(contaminant.shape),
    label: machine.label ?? machine.id,
    frequenciesKHz: assessment.frequenciesKHz,
    refused: assessment.refusals[0]?.id ?? null,
    expectedMm: finding.expectedMm,
    cautiousMm: finding.cautiousMm,
    mustFindMm: contaminant.mustFindMm,
    shownMm,
    conductivity: {
      sPerM: assessment.conductivity.valueSPerM,
      words: CONDUCTIVITY_WORDS[assessment.conductivity.state] ?? assessment.conductivity.state,
    },
    plane: responsePlane(setup, shownMm, stepsBetween(PLANE_KHZ, 'log', PLANE_STEPS, null)),
    inUse: responsePlane(setup, shownMm, assessment.frequenciesKHz),
    series: MOVED.flatMap((input) =>
      sizeAgainst(brief, pointIndex, [machine.id], contaminantIndex, input, STEPS).map((series) => ({
        series,
        unit: knownInput(input).unit,
        scale: knownInput(input).scale,
      })),
    ),
    turned: {
      words: pieceWords(turnedContaminant, names),
      measure: measureWords(turnedContaminant.shape),
      steps: turned(ANGLES_DEG),
      here: turned([angleDeg])[0]!,
    },
    opening: {
      heightMm: opening.heightMm,
      widthMm: opening.widthMm,
      foodHeightMm: point.heightMm,
      foodWidthMm: point.widthMm * point.lanes,
      places,
    },
  }
}
