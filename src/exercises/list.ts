import type { Exercise } from './exercise.ts'
import { emptyOrProduct } from './metal/empty-or-product.ts'
import { falseAlarms } from './metal/false-alarms.ts'
import { foilAndFilm } from './metal/foil-and-film.ts'
import { frozenAndThawed } from './metal/frozen-and-thawed.ts'
import { openingSize } from './metal/opening-size.ts'
import { turningAWire } from './metal/turning-a-wire.ts'
import { misconceptions } from './misconceptions.ts'
import { failedCheck } from './proof/failed-check.ts'
import { falseRejectsADay } from './proof/false-rejects-a-day.ts'
import { holdAndInterval } from './proof/hold-and-interval.ts'
import { routineCheck } from './proof/routine-check.ts'
import { thresholdGame } from './proof/threshold-game.ts'
import { cardOrInside } from './x-ray/card-or-inside.ts'
import { dualInDeepGrains, dualInEvenFood } from './x-ray/dual-energy.ts'
import { finePixels } from './x-ray/fine-pixels.ts'
import { flakeLyingFlat } from './x-ray/flake-lying-flat.ts'
import { jarHeel } from './x-ray/jar-heel.ts'
import { lightPlastics } from './x-ray/light-plastics.ts'
import { thinAndFast } from './x-ray/thin-and-fast.ts'

/** Every exercise that needs no brief, the easy ones first, as a morning would take them. */
export const EXERCISES: readonly Exercise[] = [
  routineCheck,
  failedCheck,
  holdAndInterval,
  falseRejectsADay,
  falseAlarms,
  misconceptions,
  foilAndFilm,
  lightPlastics,
  cardOrInside,
  openingSize,
  turningAWire,
  frozenAndThawed,
  emptyOrProduct,
  thinAndFast,
  dualInEvenFood,
  dualInDeepGrains,
  finePixels,
  flakeLyingFlat,
  jarHeel,
  thresholdGame,
]
