import type { Clause, RunRow, RunsAnswer } from '../../contract/index.ts'
import type { Link } from '../fit/link.ts'
import { readClause } from './clause.ts'
import { CleanPacks, cleanRunOf } from './clean-run.ts'
import { groupsOf } from './group.ts'
import { missingOf } from './missing.ts'
import { pairedMachines } from './paired.ts'

/** A trial read: what was shown, what was not, what is missing. Nothing of a prediction enters. */
export function readTrial(
  rows: readonly RunRow[],
  link: Link = 'logit',
  clause: Clause | null = null,
): RunsAnswer {
  const packs = new CleanPacks(rows)
  const groups = groupsOf(rows, packs, link)
  return {
    groups,
    clean: packs.all().map((clean) => ({
      equipment: clean[0]!.equipment,
      setting: clean[0]!.setting ?? '',
      run: cleanRunOf(clean)!,
    })),
    paired: pairedMachines(rows),
    missing: missingOf(rows, groups),
    prediction: null,
    records: null,
    clause: clause && readClause(groups, clause),
    plan: null,
    problems: [],
  }
}
