import type { Finding } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import type { Missed } from '../stages.ts'

function missOf(finding: Finding, askedMm: number): Omit<Missed, 'others'> {
  const { meets, expectedMm, cautiousMm } = finding
  if (expectedMm === null) return { kind: 'none', finding, gapMm: null }
  if (meets === 'no') return { kind: 'above', finding, gapMm: expectedMm - askedMm }
  if (cautiousMm === null) return { kind: 'unpromised', finding, gapMm: null }
  return { kind: 'promised-above', finding, gapMm: cautiousMm - askedMm }
}

/** The sizes an option misses, each with its gap to the size to find, mm; what is missed at every size for one reason together. */
export function missedOf(findings: readonly Finding[]): Missed[] {
  const missed = findings.filter(({ meets }) => !isPromised(meets) && meets !== 'open')
  const isNone = ({ meets, expectedMm, mustFindMm }: Finding) =>
    meets === 'cannot' || expectedMm === null || mustFindMm === null
  return missed.flatMap((finding): Missed[] => {
    if (!isNone(finding)) return [{ ...missOf(finding, finding.mustFindMm!), others: [] }]
    const [first, ...others] = missed.filter((one) => isNone(one) && one.note === finding.note)
    if (first !== finding) return []
    return [{ kind: 'none', finding, others: others.map(({ contaminant }) => contaminant), gapMm: null }]
  })
}
