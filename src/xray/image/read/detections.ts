import { columnMm, rowMm } from '../food/raster.ts'
import type { ReadArea } from './read-area.ts'
import type { ScoreMap } from './score-map.ts'

/** A place where a filter's answer passed the threshold: one connected patch of pixels. */
export interface Detection {
  /** Where the answer is strongest, mm in the picture plane. */
  readonly u: number
  readonly v: number
  readonly score: number
  /** Index of the filter that answered most. */
  readonly filter: number
  readonly fromU: number
  readonly toU: number
  readonly fromV: number
  readonly toV: number
}

/** Strongest answer of all filters at every pixel. */
export interface BestScores {
  readonly scores: Float32Array
  readonly filter: Uint8Array
}

export function bestScores(maps: readonly ScoreMap[], length: number): BestScores {
  const scores = new Float32Array(length).fill(Number.NEGATIVE_INFINITY)
  const filter = new Uint8Array(length)
  maps.forEach((map, k) => {
    for (let i = 0; i < length; i++) {
      if (map.scores[i]! > scores[i]!) {
        scores[i] = map.scores[i]!
        filter[i] = k
      }
    }
  })
  return { scores, filter }
}

/** A patch this close to a stronger one, mm, and weaker than this share of it, belongs to the same thing. */
const SAME_WITHIN_MM = 4
const SAME_BELOW_SHARE = 0.5

/**
 * Patches above the threshold as things: the ripples a filter leaves around something strong are joined to
 * it. Strongest first.
 */
export function detectionsAbove(area: ReadArea, best: BestScores, threshold: number): Detection[] {
  const things: Detection[] = []
  for (const patch of patchesAbove(area, best, threshold)) {
    const same = things.findIndex(
      (thing) => patch.score < SAME_BELOW_SHARE * thing.score && gapMm(patch, thing) <= SAME_WITHIN_MM,
    )
    if (same < 0) things.push(patch)
  }
  return things
}

function gapMm(a: Detection, b: Detection): number {
  const du = Math.max(0, a.fromU - b.toU, b.fromU - a.toU)
  const dv = Math.max(0, a.fromV - b.toV, b.fromV - a.toV)
  return Math.hypot(du, dv)
}

/** Patches above the threshold that touch (corners count), strongest first. */
export function patchesAbove(area: ReadArea, best: BestScores, threshold: number): Detection[] {
  const { columns, rows } = area.pixels
  const seen = new Uint8Array(columns * rows)
  const found: Detection[] = []
  const stack: number[] = []
  const half = area.pixels.pitchMm / 2
  for (let start = 0; start < seen.length; start++) {
    if (seen[start] === 1 || area.mask[start] === 0 || best.scores[start]! <= threshold) continue
    seen[start] = 1
    stack.push(start)
    let peak = start
    let [left, right, top, bottom] = [columns, -1, rows, -1]
    while (stack.length > 0) {
      const at = stack.pop()!
      const column = at % columns
      const row = (at - column) / columns
      if (best.scores[at]! > best.scores[peak]!) peak = at
      left = Math.min(left, column)
      right = Math.max(right, column)
      top = Math.min(top, row)
      bottom = Math.max(bottom, row)
      for (let y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
        for (let x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
          const next = y * columns + x
          if (seen[next] === 1 || area.mask[next] === 0 || best.scores[next]! <= threshold) continue
          seen[next] = 1
          stack.push(next)
        }
      }
    }
    found.push({
      u: columnMm(area.pixels, peak % columns),
      v: rowMm(area.pixels, Math.floor(peak / columns)),
      score: best.scores[peak]!,
      filter: best.filter[peak]!,
      fromU: columnMm(area.pixels, left) - half,
      toU: columnMm(area.pixels, right) + half,
      fromV: rowMm(area.pixels, top) - half,
      toV: rowMm(area.pixels, bottom) + half,
    })
  }
  return found.sort((a, b) => b.score - a.score)
}
