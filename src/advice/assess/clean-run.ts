import type { Brief, CleanRunRow, Point } from '../../contract/index.ts'

/** The latest clean run of a machine at a point; null where there is none. */
export function cleanRunAt(brief: Brief, pointIndex: number, equipment: string): CleanRunRow | null {
  const { name } = brief.points[pointIndex]!
  return brief.cleanRuns.filter((run) => run.point === name && run.equipment === equipment).at(-1) ?? null
}

/**
 * Rejects per pack behind a clean run: (r + ½)/(n + 1), the middle of what the run leaves open to a few per cent (the
 * mean of Jeffreys' posterior). Ten times more or fewer moves a threshold by about a tenth.
 */
export const rejectsPerPack = ({ packs, rejects }: CleanRunRow['cleanRun']): number =>
  (rejects + 0.5) / (packs + 1)

/** The point as a machine rejects there: where a clean run was entered, its rejects stand in for those asked. */
export function asItRejects(brief: Brief, pointIndex: number, equipment: string): Point {
  const point = brief.points[pointIndex]!
  const run = cleanRunAt(brief, pointIndex, equipment)
  return run ? { ...point, falseRejectsPerPack: rejectsPerPack(run.cleanRun) } : point
}
