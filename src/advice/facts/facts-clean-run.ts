import type { Brief } from '../../contract/index.ts'
import { cleanRunAt, rejectsPerPack } from '../assess/clean-run.ts'
import type { FactWriter } from './fact-sheet.ts'

/** What a clean run entered for this machine says of its threshold. */
export function writeCleanRun(write: FactWriter, brief: Brief, pointIndex: number, equipment: string): void {
  const run = cleanRunAt(brief, pointIndex, equipment)
  write.computed('cleanRun.packs', run?.cleanRun.packs ?? 0)
  if (!run) return
  write.computed('cleanRun.rejects', run.cleanRun.rejects)
  const asked = brief.points[pointIndex]!.falseRejectsPerPack
  write.computed('cleanRun.overAsked', rejectsPerPack(run.cleanRun) / asked)
}
