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

/** A place whose sizes come this near to the deciding one's counts with it: no model parts them (judgement). */
const AS_GOOD = 1.05

/** Places where the piece can lie and where a size met by the deciding place is not met for sure. */
export function placesNotMet(
  { cautiousMm }: Zone['sizes'],
  zones: readonly Zone[],
  mustFindMm: number | null,
): Zone[] {
  const asGood = (own: number | null) => own !== null && cautiousMm !== null && own <= cautiousMm * AS_GOOD
  return zones.filter(
    ({ canLieThere, sizes }) =>
      canLieThere &&
      !asGood(sizes.cautiousMm) &&
      meetsOf(sizes.bestMm, sizes.expectedMm, sizes.cautiousMm, mustFindMm) !== 'yes',
  )
}

/**
 * How a size stands over all places where the piece can lie. `sizes` are those of the deciding place: the middle, or
 * where the piece settles, which decides alone. What the middle promises and another place does not is partly met.
 * `shown`: the deciding place's sizes where a trial showed one; it speaks for the places computed to be as good.
 */
export function meetsOver(
  sizes: Zone['sizes'],
  zones: readonly Zone[],
  mustFindMm: number | null,
  shown = sizes,
): Meets {
  const there = meetsOf(shown.bestMm, shown.expectedMm, shown.cautiousMm, mustFindMm)
  if (there !== 'yes' || zones.some(({ settlesThere }) => settlesThere)) return there
  return placesNotMet(sizes, zones, mustFindMm).length > 0 ? 'partly' : 'yes'
}

/** Met at the value that can be promised, be it but for named places. */
export const isPromised = (meets: Meets): boolean => meets === 'yes' || meets === 'partly'

/** Met, if only as expected. */
export const isExpected = (meets: Meets): boolean => isPromised(meets) || meets === 'maybe'

/** What a verdict looks at: how a size is met, and whether one was asked. */
export type Met = Pick<Finding, 'meets' | 'mustFindMm'>

/** Without a size asked there is nothing to meet or to miss. */
export const isAsked = ({ mustFindMm }: Pick<Met, 'mustFindMm'>): boolean => mustFindMm !== null

/** Every size asked, at least one, is met at the cautious value, be it but for named places. */
export function meetsAll(findings: readonly Met[]): boolean {
  const asked = findings.filter(isAsked)
  return asked.length > 0 && asked.every((f) => isPromised(f.meets))
}

/** Some size asked is met, if only as expected. */
export const isAnyMet = (findings: readonly Met[]): boolean =>
  findings.some((f) => isAsked(f) && isExpected(f.meets))

/**
 * Verdict of one option, best fit and builds apart (those need the other options and the pack): not suitable
 * when excluded or when nothing asked is met; worth a test when nothing asked is worse than maybe; conditional
 * in between, and where no size is asked of anything it can find.
 */
export function verdictOf(
  findings: readonly Met[],
  excluded: boolean,
): Exclude<Verdict, 'best-fit' | 'no-build'> {
  if (excluded) return 'not-suitable'
  const asked = findings.filter(isAsked)
  const judged = asked.length > 0 ? asked : findings
  if (!judged.some(({ meets }) => isExpected(meets) || meets === 'open')) return 'not-suitable'
  return asked.length > 0 && asked.every(({ meets }) => isExpected(meets)) ? 'worth-a-test' : 'conditional'
}
