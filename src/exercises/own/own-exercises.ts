import type { Exercise } from '../exercise.ts'
import { failedCheckOn } from '../proof/failed-check.ts'
import { rejectsADay } from '../proof/false-rejects-a-day.ts'
import { howManyHeld } from '../proof/hold-and-interval.ts'
import { hardToFind } from './hard-to-find.ts'
import { OWN_RESTS, type OwnCase } from './own-case.ts'
import { sizeAsked } from './size-asked.ts'
import { smallestSize } from './smallest-size.ts'
import { weakPlace } from './weak-place.ts'

/** Exercises on the line's own figures; those the brief has figures for. */
function lineExercises({ brief }: OwnCase): Exercise[] {
  const point = brief.points.findLast(({ packsPerMin }) => packsPerMin !== null)
  if (!point) return []
  const packsPerMin = point.packsPerMin!
  const { hoursPerDay, falseRejectsPerPack, checkIntervalMin, reactMin } = point
  const rejects: Exercise = {
    id: 'own-false-rejects',
    title: () => 'Your reject bin',
    about: () => 'Your false-reject rate, in packs.',
    teaches: ({ say }) =>
      say('What your false-reject rate means in packs a day.', 'How many good packs you throw out in a day.'),
    timed: false,
    count: 1,
    rests: OWN_RESTS,
    questions: (voice) => [rejectsADay({ packsPerMin, hoursPerDay, falseRejectsPerPack }, voice)],
  }
  if (checkIntervalMin === null || reactMin === null) return [rejects]
  const line = { packsPerMin, checkIntervalMin, reactMin }
  return [
    rejects,
    {
      id: 'own-hold',
      title: () => 'Your hold',
      about: () => 'A failed check on your line.',
      teaches: ({ say }) =>
        say('What a failed check holds on your line.', 'How much you hold back when a check fails.'),
      timed: false,
      count: 1,
      rests: OWN_RESTS,
      questions: (voice) => [howManyHeld(line, voice)],
    },
    failedCheckOn(line, 'own-failed-check'),
  ]
}

/** Every exercise that can be made of a brief. */
export function ownExercises(own: OwnCase): Exercise[] {
  return [smallestSize(own), sizeAsked(own), hardToFind(own), weakPlace(own)]
    .filter((exercise) => exercise !== null)
    .concat(lineExercises(own))
}
