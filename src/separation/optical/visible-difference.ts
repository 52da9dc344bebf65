import {
  type FigureId,
  figures,
  foodColours,
  foreignColours,
  similarColours,
} from '../../reference/separation.ts'

/** Share of foreign pieces that colour tells from the food, and the figures it rests on. */
export interface VisibleDifference {
  readonly low: number
  readonly high: number
  readonly figures: readonly FigureId[]
  readonly food: readonly string[]
  readonly foreign: readonly string[]
}

const ANY = 'any'

function pairFigure(foreign: string, food: string): FigureId {
  if (foreign === ANY) return 'colour-unknown'
  if (foreign === 'transparent') return 'colour-transparent'
  if (foreign === food) return 'colour-same'
  const similar = similarColours.some(
    ([a, b]) => (a === foreign && b === food) || (a === food && b === foreign),
  )
  return similar ? 'colour-similar' : 'colour-distinct'
}

const TOLD_LEAST_FIRST: readonly FigureId[] = [
  'colour-same',
  'colour-similar',
  'colour-transparent',
  'colour-distinct',
]

/**
 * How well a camera tells foreign matter of a material from a food. Each colour the foreign matter may have
 * counts by the food's colour nearest to it; the range runs over its colours. A food or material without
 * stated colours, and a free colour, leaves the range open from nothing to all. Source: `visible-difference`.
 */
export function visibleDifference(foodId: string, materialId: string): VisibleDifference {
  const food = foodColours.get(foodId) ?? []
  const foreign = foreignColours.get(materialId) ?? [ANY]
  const used = foreign.map((colour): FigureId => {
    if (food.length === 0) return 'colour-unknown'
    const pairs = food.map((f) => pairFigure(colour, f))
    return TOLD_LEAST_FIRST.find((id) => pairs.includes(id)) ?? 'colour-unknown'
  })
  return {
    low: Math.min(...used.map((id) => figures[id].range[0])),
    high: Math.max(...used.map((id) => figures[id].range[1])),
    figures: [...new Set(used)],
    food,
    foreign,
  }
}
