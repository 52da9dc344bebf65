import type { Brief } from '../../contract/index.ts'
import type { Answers } from '../line/answers.ts'
import { findingOf, type Line } from '../line/controls-in-place.ts'
import type { FragmentSizes } from '../sizes/fragment-sizes.ts'
import { usualFragments } from '../sizes/usual-fragments.ts'

/** Fragments as assumed, with what a person says of median, factor and thickness for length. */
export function fragmentsOf(brief: Brief, line: Line, contaminant: number, answers: Answers): FragmentSizes {
  const last = line.controls.at(-1)
  const expected = last ? (findingOf(last, contaminant)?.expectedMm ?? null) : null
  const usual = usualFragments(
    brief.contaminants[contaminant]!,
    brief.contaminants[contaminant]!.mustFindMm ?? expected,
  )
  const number = (key: string, filled: number, unit: string, range: readonly [number, number]) =>
    answers.number(`c${contaminant}.${key}`, filled, unit, range).value
  const perLength = usual.shapes.reduce((sum, shape) => sum + shape.share * shape.perLength, 0)
  const scale = number('shape', perLength, '', [0.01, 1]) / perLength
  return {
    medianMm: number('median', usual.medianMm, 'mm', [0.1, 100]),
    factor: number('factor', usual.factor, '', [1.05, 5]),
    shapes: usual.shapes.map((shape) => ({ ...shape, perLength: Math.min(1, shape.perLength * scale) })),
  }
}
