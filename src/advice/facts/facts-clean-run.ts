import type { Brief } from '../../contract/index.ts'
import { cleanRunAt, rejectsPerPack } from '../assess/clean-run.ts'
import type { FactWriter } from './fact-sheet.ts'

/** Trials of this machine at this point that no longer count, each with its pieces' changes once. */
function writeLapsed(write: FactWriter, brief: Brief, pointIndex: number, equipment: string): void {
  const here = brief.lapsed.filter((one) => one.pointIndex === pointIndex && one.equipment === equipment)
  write.computed('trial.lapsed', here.length)
  if (here.length > 0)
    write.computed('trial.lapsedBecause', [...new Set(here.flatMap(({ changed }) => changed))].join('; '))
}

/** What a clean run entered for this machine says of its threshold, and which trials of it have lapsed. */
export function writeCleanRun(write: FactWriter, brief: Brief, pointIndex: number, equipment: string): void {
  writeLapsed(write, brief, pointIndex, equipment)
  const run = cleanRunAt(brief, pointIndex, equipment)
  write.computed('cleanRun.packs', run?.cleanRun.packs ?? 0)
  if (!run) return
  write.computed('cleanRun.rejects', run.cleanRun.rejects)
  const asked = brief.points[pointIndex]!.falseRejectsPerPack
  write.computed('cleanRun.overAsked', rejectsPerPack(run.cleanRun, asked) / asked)
}
