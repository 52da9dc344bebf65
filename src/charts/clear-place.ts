/** A point of a curve, as shares of the plot: 0 to 1 along, 0 at the foot to 1 at the top. */
interface Point {
  readonly along: number
  readonly up: number
}

export interface ClearPlace {
  readonly along: number
  readonly anchor: 'start' | 'middle' | 'end'
  /** Stands above the line it names, or below it. */
  readonly above: boolean
}

const STARTS = [
  { along: 0, anchor: 'start' },
  { along: 1, anchor: 'end' },
  { along: 0.5, anchor: 'middle' },
] as const

/**
 * Where along a level the words that name it lie farthest from every curve: at an end or in the middle, above or
 * below.
 * @param level of the line, as a share of the plot's height
 * @param width of the words, as a share of the plot's width
 * @param height of the words, as a share of the plot's height
 */
export function clearPlace(
  curves: readonly (readonly Point[])[],
  level: number,
  width: number,
  height: number,
): ClearPlace {
  const all = STARTS.flatMap(({ along, anchor }) =>
    [true, false].map((above) => {
      const left = anchor === 'start' ? along : anchor === 'end' ? along - width : along - width / 2
      const [foot, top] = above ? [level, level + height] : [level - height, level]
      const inside = curves.flatMap((curve) => pointsBetween(curve, left, left + width))
      const away = inside.map(({ up }) =>
        up >= foot && up <= top ? 0 : Math.min(Math.abs(up - foot), Math.abs(up - top)),
      )
      const room = top > 1 || foot < 0 ? -1 : Math.min(1, ...away)
      return { along, anchor, above, room }
    }),
  )
  const best = all.reduce((found, one) => (one.room > found.room + 1e-9 ? one : found))
  return { along: best.along, anchor: best.anchor, above: best.above }
}

/** Points of a curve over a stretch, its crossings of the ends included. */
function pointsBetween(curve: readonly Point[], left: number, right: number): Point[] {
  const inside = curve.filter(({ along }) => along >= left && along <= right)
  const crossings = curve.flatMap((point, at) => {
    const before = curve[at - 1]
    if (!before || before.along === point.along) return []
    return [left, right].flatMap((end) => {
      const share = (end - before.along) / (point.along - before.along)
      return share > 0 && share < 1 ? [{ along: end, up: before.up + share * (point.up - before.up) }] : []
    })
  })
  return [...inside, ...crossings]
}
