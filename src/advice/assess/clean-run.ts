import type { Brief, CleanRunRow, MeasuredRow, Point } from '../../contract/index.ts'

/** Clean runs entered by themselves, or those that trials of a piece were made with as well. */
type Which = 'by themselves' | 'all'

const hasRun = (row: MeasuredRow): row is CleanRunRow => (row.cleanRun?.packs ?? 0) > 0

/** The latest clean run of a machine at a point; null where there is none. */
export function cleanRunAt(
  brief: Brief,
  pointIndex: number,
  equipment: string,
  which: Which = 'all',
): CleanRunRow | null {
  const { name } = brief.points[pointIndex]!
  const rows: readonly MeasuredRow[] =
    which === 'all' ? [...brief.cleanRuns, ...brief.measured] : brief.cleanRuns
  return rows
    .filter(hasRun)
    .filter((run) => run.point === name && run.equipment === equipment)
    .reduce<CleanRunRow | null>(
      (latest, run) => (latest && (run.date ?? '') < (latest.date ?? '') ? latest : run),
      null,
    )
}

/**
 * Rejects per pack behind a clean run: (r + ½)/(n + ½/asked), the mean of a beta posterior whose prior has the rate
 * asked as its mean and weighs half a reject (assumed). A short run without a reject then says little, instead of
 * lowering the threshold. Ten times more or fewer moves a threshold by about a tenth.
 */
export const rejectsPerPack = ({ packs, rejects }: CleanRunRow['cleanRun'], askedPerPack: number): number =>
  (rejects + 0.5) / (packs + 0.5 / askedPerPack)

/** The point as a machine rejects there: where a clean run was made, its rejects stand in for those asked. */
export function asItRejects(brief: Brief, pointIndex: number, equipment: string, which: Which): Point {
  const point = brief.points[pointIndex]!
  const run = cleanRunAt(brief, pointIndex, equipment, which)
  if (!run) return point
  return { ...point, falseRejectsPerPack: rejectsPerPack(run.cleanRun, point.falseRejectsPerPack) }
}
