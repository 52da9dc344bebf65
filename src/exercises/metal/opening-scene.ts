import type { Point } from '../../contract/index.ts'
import type { Picture } from '../exercise.ts'

/** The opening of a metal detector with the pack that passes it, before anything is asked. */
export function openingScene({ name, widthMm, heightMm, apertureWidthMm, apertureHeightMm }: Point): Picture {
  if (apertureWidthMm === null || apertureHeightMm === null)
    throw new RangeError(`point ${name} states no opening to be drawn`)
  return {
    kind: 'opening',
    title: 'The opening with the pack, seen along the travel',
    widthMm: apertureWidthMm,
    heightMm: apertureHeightMm,
    food: { widthMm, heightMm },
    places: [],
  }
}
