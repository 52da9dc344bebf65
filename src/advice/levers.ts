import type { BriefInput, Point } from '../contract/index.ts'

/** One number of the brief moved. */
export interface Move {
  readonly path: string
  readonly from: number
  readonly to: number
}

/**
 * Something a person can act on. `at(share)` gives the moves for a share from 0 (as it is) to 1 (as far as it
 * goes), in figures a person would set.
 */
export interface Lever {
  readonly id: 'depth-with-speed' | 'speed' | 'false-rejects' | 'opening'
  readonly words: string
  readonly at: (share: number) => Move[]
}

/** How far a change may go (judgement: beyond these a line is another line). */
export const LEVER_LIMITS = {
  shallowestShare: 0.25,
  fastestMPerMin: 120,
  slowestShare: 0.4,
  gapBetweenPacksMm: 50,
  falseRejectsPerPack: 0.01,
} as const

const down = (value: number, step: number) => Number((Math.floor(value / step + 1e-9) * step).toPrecision(6))
const up = (value: number, step: number) => Number((Math.ceil(value / step - 1e-9) * step).toPrecision(6))

function depthWithSpeed(point: Point, path: string): Lever | null {
  if (point.stage !== 'loose') return null
  const least = Math.max(
    point.heightMm * LEVER_LIMITS.shallowestShare,
    point.product.grainMm,
    (point.heightMm * point.speedMPerMin) / LEVER_LIMITS.fastestMPerMin,
  )
  if (least > point.heightMm * 0.95) return null
  return {
    id: 'depth-with-speed',
    words: 'a shallower bed on a faster belt, at the same throughput',
    at: (share) => {
      const heightMm = down(point.heightMm - share * (point.heightMm - least), 1)
      const speed = up((point.speedMPerMin * point.heightMm) / heightMm, 0.5)
      return [
        { path: `${path}.heightMm`, from: point.heightMm, to: heightMm },
        { path: `${path}.speedMPerMin`, from: point.speedMPerMin, to: speed },
      ]
    },
  }
}

function slower(point: Point, path: string): Lever | null {
  if (point.stage !== 'packed' || point.packsPerMin === null) return null
  const spacingMm = point.lengthMm + LEVER_LIMITS.gapBetweenPacksMm
  const needed = (point.packsPerMin * spacingMm) / 1000 / point.lanes
  const least = Math.max(needed, point.speedMPerMin * LEVER_LIMITS.slowestShare)
  if (least > point.speedMPerMin * 0.95) return null
  return {
    id: 'speed',
    words: 'a slower belt with the packs closer together, at the same packs per minute',
    at: (share) => [
      {
        path: `${path}.speedMPerMin`,
        from: point.speedMPerMin,
        to: Math.max(up(needed, 0.5), down(point.speedMPerMin - share * (point.speedMPerMin - least), 0.5)),
      },
    ],
  }
}

function falseRejects(point: Point, path: string): Lever | null {
  const most = LEVER_LIMITS.falseRejectsPerPack
  if (point.falseRejectsPerPack > most / 1.5) return null
  const decades = Math.log(most / point.falseRejectsPerPack)
  return {
    id: 'false-rejects',
    words: 'more false rejects accepted',
    at: (share) => [
      {
        path: `${path}.falseRejectsPerPack`,
        from: point.falseRejectsPerPack,
        to: Number(Math.min(most, point.falseRejectsPerPack * Math.exp(share * decades)).toPrecision(2)),
      },
    ],
  }
}

/** What can be acted on at a point; never the food itself. */
export function leversAt(point: Point, index: number): Lever[] {
  const path = `points.${index}`
  return [depthWithSpeed(point, path), slower(point, path), falseRejects(point, path)].filter(
    (lever) => lever !== null,
  )
}

/** The brief as given with the moves made. */
export function moved(given: BriefInput, moves: readonly Move[]): BriefInput {
  const copy = structuredClone(given)
  for (const { path, to } of moves) {
    const keys = path.split('.')
    let at = copy as unknown as Record<string, unknown>
    for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>
    at[keys.at(-1)!] = to
  }
  return copy
}
