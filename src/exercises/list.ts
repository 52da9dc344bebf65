import { cardOrInside } from './card-or-inside.ts'
import { dualInDeepGrains, dualInEvenFood } from './dual-energy.ts'
import { emptyOrProduct } from './empty-or-product.ts'
import type { Exercise } from './exercise.ts'
import { failedCheck } from './failed-check.ts'
import { falseAlarms } from './false-alarms.ts'
import { falseRejectsADay } from './false-rejects-a-day.ts'
import { finePixels } from './fine-pixels.ts'
import { flakeLyingFlat } from './flake-lying-flat.ts'
import { foilAndFilm } from './foil-and-film.ts'
import { frozenAndThawed } from './frozen-and-thawed.ts'
import { holdAndInterval } from './hold-and-interval.ts'
import { jarHeel } from './jar-heel.ts'
import { lightPlastics } from './light-plastics.ts'
import { misconceptions } from './misconceptions.ts'
import { openingSize } from './opening-size.ts'
import { routineCheck } from './routine-check.ts'
import { thinAndFast } from './thin-and-fast.ts'
import { thresholdGame } from './threshold-game.ts'
import { turningAWire } from './turning-a-wire.ts'

/** Every exercise that needs no brief, in the order a morning would take them. */
export const EXERCISES: readonly Exercise[] = [
  thresholdGame,
  falseRejectsADay,
  thinAndFast,
  dualInEvenFood,
  dualInDeepGrains,
  finePixels,
  lightPlastics,
  cardOrInside,
  jarHeel,
  flakeLyingFlat,
  foilAndFilm,
  turningAWire,
  openingSize,
  frozenAndThawed,
  emptyOrProduct,
  routineCheck,
  holdAndInterval,
  falseAlarms,
  failedCheck,
  misconceptions,
]
