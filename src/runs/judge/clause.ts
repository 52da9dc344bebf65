import type { Clause, ClauseReading, RunGroup } from '../../contract/index.ts'

/** Whether what was agreed is met, for every place and lie in which that size was run. */
export function readClause(groups: readonly RunGroup[], clause: Clause): ClauseReading[] {
  return groups.flatMap((group, index): ClauseReading[] => {
    const row = group.exact.find(({ sizeMm }) => Math.abs(sizeMm - clause.sizeMm) < 1e-9)
    if (!row) return []
    const missed = row.runs - row.found
    const short = [
      row.runs < clause.pieces ? `${row.runs} pieces were run, ${clause.pieces} are asked` : '',
      missed > clause.misses ? `${missed} were missed, at most ${clause.misses} may be` : '',
      ...cleanShort(group, clause),
      group.simulated ? 'the runs are simulated' : '',
    ].filter(Boolean)
    const counted = `${row.runs} pieces of ${clause.sizeMm} mm, ${missed} missed`
    const clean = group.clean
      ? `; ${group.clean.packs} clean packs, ${group.clean.rejects} rejected`
      : '; no clean packs'
    return [
      {
        group: index,
        met: short.length === 0,
        words: `${short.length === 0 ? 'Met' : 'Not met'}: ${counted}${clean}${short.length > 0 ? ` (${short.join('; ')})` : ''}.`,
      },
    ]
  })
}

function cleanShort({ clean }: RunGroup, { cleanPacks, cleanRejects }: Clause): string[] {
  if (cleanPacks === 0) return []
  if (!clean) return [`no clean packs were run, ${cleanPacks} are asked`]
  return [
    clean.packs < cleanPacks ? `${clean.packs} clean packs were run, ${cleanPacks} are asked` : '',
    clean.rejects > cleanRejects
      ? `${clean.rejects} clean packs were rejected, at most ${cleanRejects} may be`
      : '',
  ]
}
