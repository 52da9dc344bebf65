import { lineUp } from '../advice/assess/line-up.ts'
import { assessCoil } from '../coil/assess-coil.ts'
import type { CoilAssessment, CoilFinding } from '../coil/assessment.ts'
import type { Listening } from '../coil/decide/reading.ts'
import { COIL_PARAMETERS } from '../coil/parameters.ts'
import { type Piece, pieceOf } from '../coil/piece/piece.ts'
import { hearing, type Scene } from '../coil/scene.ts'
import { situationOf } from '../coil/situation.ts'
import type { Brief, CoilMachine, Contaminant } from '../contract/index.ts'

/** One metal detector at a point, set as the advice sets it, and one piece of metal in it. */
export interface MetalSetup {
  readonly machine: CoilMachine
  readonly assessment: CoilAssessment
  readonly contaminant: Contaminant
  readonly finding: CoilFinding
  readonly piece: Piece
  readonly scene: Scene
  /** How the machine listens at the frequencies it runs. */
  readonly listening: Listening
}

/** Metal detectors that can stand at a point, in the order of the line-up. */
export function metalDetectorsAt(brief: Brief, pointIndex: number): CoilMachine[] {
  return lineUp(brief, brief.points[pointIndex]!).flatMap(({ machine }) =>
    machine.family === 'coil' ? [machine] : [],
  )
}

/** Indices of the brief's contaminants that a coil answers to. */
export function metalsOf(brief: Brief): number[] {
  return brief.contaminants.flatMap((contaminant, index) => (pieceOf(contaminant) ? [index] : []))
}

/** Sets up one machine and one contaminant; null where the contaminant is no metal. */
export function metalSetup(
  brief: Brief,
  pointIndex: number,
  machine: CoilMachine,
  contaminantIndex: number,
): MetalSetup | null {
  const point = brief.points[pointIndex]!
  const contaminant = brief.contaminants[contaminantIndex]!
  const piece = pieceOf(contaminant)
  if (!piece) return null
  const assessment = assessCoil({
    machine,
    point,
    contaminants: brief.contaminants,
    ...(machine.mostAtOnce ? { mostAtOnce: machine.mostAtOnce } : {}),
  })
  const { conductivity, sceneAt } = situationOf(machine, point)
  const scene = sceneAt(conductivity.valueSPerM, 'central')
  const frequenciesHz = assessment.frequenciesKHz.map((kHz) => kHz * 1000)
  return {
    machine,
    assessment,
    contaminant,
    finding: assessment.findings[contaminantIndex]!,
    piece,
    scene,
    listening: {
      hearing: hearing(scene, frequenciesHz, COIL_PARAMETERS),
      thresholdZ: assessment.thresholdZ,
      spread: assessment.spread,
    },
  }
}
