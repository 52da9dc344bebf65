import type { Finding, Meets, Verdict, Zone } from '../../contract/index.ts'

/** How a size stands to the size to find; see the contract's table. All mm; null: not findable. */
export function meetsOf(
  bestMm: number | null,
  expectedMm: number | null,
  cautiousMm: number | null,
  mustFindMm: number | null,
): Meets {
  if (bestMm === null) return 'cannot'
  if (mustFindMm === null) return 'open'
  if (expectedMm === null || expectedMm > mustFindMm) return 'no'
  return cautiousMm === null || cautiousMm > mustFindMm ? 'maybe' : 'yes'
}

/** Places where the piece can lie and where its size is not met for sure. */
export function placesNotMet(zones: readonly Zone[], mustFindMm: number | null): Zone[] {
  return zones.filter(
    ({ canLieThere, sizes }) =>
      canLieThere && meetsOf(sizes.bestMm, sizes.expectedMm, sizes.cautiousMm, mustFindMm) !== 'yes',
  )
}

/**
 * How a size stands over all places where the piece can lie. `sizes` are those of the deciding place: the middle, or
 * where the piece settles, which decides alone. What the middle promises and another place does not is partly met.
 */
export function meetsOver(sizes: Zone['sizes'], zones: readonly Zone[], mustFindMm: number | null): Meets {
  const there = meetsOf(sizes.bestMm, sizes.expectedMm, sizes.cautiousMm, mustFindMm)
  if (there !== 'yes' || zones.some(({ settlesThere }) => settlesThere)) return there
  return placesNotMet(zones, mustFindMm).length > 0 ? 'partly' : 'yes'
}

/** Met at the value that can be promised, be it but for named places. */
export const isPromised = (meets: Meets): boolean => meets === 'yes' || meets === 'partly'

/** Met, if only as expected. */
export const isExpected = (meets: Meets): boolean => isPromised(meets) || meets === 'maybe'

/** Findings with a verdict's worth of knowledge: what a verdict looks at. */
export type Met = Pick<Finding, 'meets'>

/** Every size is met at the cautious value, be it but for named places. */
export function meetsAll(findings: readonly Met[]): boolean {
  return findings.length > 0 && findings.every((f) => isPromised(f.meets))
}

/** Some size is met, if only as expected. */
export function isAnyMet(findings: readonly Met[]): boolean {
  return findings.some(({ meets }) => isExpected(meets))
}

/**
 * Verdict of one option, best fit apart (that needs the other options): not suitable when excluded or when
 * nothing is met; worth a test when nothing is worse than maybe; conditional in between.
 */
export function verdictOf(
  findings: readonly Met[],
  excluded: boolean,
): Exclude<Verdict, 'best-fit' | 'no-build'> {
  if (excluded) return 'not-suitable'
  const has = (meets: Meets) => findings.some((f) => f.meets === meets)
  if (!isAnyMet(findings) && !has('open')) return 'not-suitable'
  const nothingWorse = !has('no') && !has('cannot') && !has('open')
  return nothingWorse ? 'worth-a-test' : 'conditional'
}
