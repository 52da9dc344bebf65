import type { Brief } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import type { Line, Row } from '../stages.ts'

/** Bone that nothing finds because it belongs in the food at every point of the line: a wing, a chop, a whole bird. */
export const belongsInTheFood = (brief: Brief, { points }: Pick<Line, 'points'>, row: Row): boolean =>
  row.by === 'none' &&
  materials.get(brief.contaminants[row.contaminant]!.material)?.kind === 'bone' &&
  points.every((at) => brief.points[at]!.product.boneIn)
