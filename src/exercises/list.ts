import type { Exercise } from './exercise.ts'
import { centreOrEdge } from './metal/centre-or-edge.ts'
import { emptyOrProduct } from './metal/empty-or-product.ts'
import { falseAlarms } from './metal/false-alarms.ts'
import { foilAndFilm } from './metal/foil-and-film.ts'
import { frozenAndThawed } from './metal/frozen-and-thawed.ts'
import { openingSize } from './metal/opening-size.ts'
import { pieceAndPlace } from './metal/piece-and-place.ts'
import { productEffect } from './metal/product-effect.ts'
import { turningAWire } from './metal/turning-a-wire.ts'
import { misconceptions } from './misconceptions.ts'
import { beforeDetection } from './proof/before-detection.ts'
import { failedCheck } from './proof/failed-check.ts'
import { falseRejectDial } from './proof/false-reject-dial.ts'
import { falseRejectsADay } from './proof/false-rejects-a-day.ts'
import { holdAndInterval } from './proof/hold-and-interval.ts'
import { rejectTiming } from './proof/reject-timing.ts'
import { routineCheck } from './proof/routine-check.ts'
import { thresholdGame } from './proof/threshold-game.ts'
import { boneByAge } from './x-ray/bone-by-age.ts'
import { cardOrInside } from './x-ray/card-or-inside.ts'
import { dualInDeepGrains, dualInEvenFood } from './x-ray/dual-energy.ts'
import { finePixels } from './x-ray/fine-pixels.ts'
import { flakeLyingFlat } from './x-ray/flake-lying-flat.ts'
import { jarHeel } from './x-ray/jar-heel.ts'
import { lightPlastics } from './x-ray/light-plastics.ts'
import { overlap } from './x-ray/overlap.ts'
import { thinAndFast } from './x-ray/thin-and-fast.ts'
import { tiltedView } from './x-ray/tilted-view.ts'
import { voltageTooHigh } from './x-ray/voltage-too-high.ts'

/** Every exercise that needs no brief, the easy ones first, as a morning would take them. */
export const EXERCISES: readonly Exercise[] = [
  routineCheck,
  failedCheck,
  holdAndInterval,
  rejectTiming,
  falseRejectsADay,
  falseAlarms,
  misconceptions,
  beforeDetection,
  foilAndFilm,
  centreOrEdge,
  openingSize,
  turningAWire,
  frozenAndThawed,
  emptyOrProduct,
  productEffect,
  pieceAndPlace,
  lightPlastics,
  cardOrInside,
  boneByAge,
  overlap,
  thinAndFast,
  voltageTooHigh,
  dualInEvenFood,
  dualInDeepGrains,
  finePixels,
  flakeLyingFlat,
  jarHeel,
  tiltedView,
  falseRejectDial,
  thresholdGame,
]
