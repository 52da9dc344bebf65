import type { Brief, Finding } from '../../contract/index.ts'
import { isExpected, isPromised } from '../assess/meets.ts'
import type { Close, Standing } from '../stages.ts'
import { compareOptions, sizeRatio, WITHOUT_PROMISE, worstRatio } from './order.ts'

/** Where between expected (0) and cautious (1) the order is looked at. */
const BETWEEN = [0, 0.25, 0.5, 0.75] as const

/** A finding as if its size were known to lie a share of the way (in logarithms) from expected to cautious. */
function findingAt(finding: Finding, share: number): Finding {
  const { expectedMm, mustFindMm, meets } = finding
  if (expectedMm === null || mustFindMm === null || !isExpected(meets)) return finding
  const cautiousMm = finding.cautiousMm ?? expectedMm * WITHOUT_PROMISE
  const sizeMm = expectedMm * (cautiousMm / expectedMm) ** share
  return {
    ...finding,
    cautiousMm: sizeMm,
    meets: sizeMm > mustFindMm ? 'maybe' : meets === 'partly' ? 'partly' : 'yes',
  }
}

const optionAt = (option: Standing, share: number): Standing => ({
  ...option,
  findings: option.findings.map((finding) => findingAt(finding, share)),
})

type Hinge = Pick<Close, 'contaminants' | 'turned'>

/** What the second option's place hangs on: sizes it meets at that share and cannot promise, or its worst. */
function hingeOf(second: Standing, share: number): Hinge {
  const there = optionAt(second, share)
  const turned = second.findings.flatMap((f, i) =>
    f.meets === 'maybe' && isPromised(there.findings[i]!.meets) ? [f.contaminant] : [],
  )
  if (turned.length > 0) return { contaminants: turned, turned: true }
  const worst = worstRatio(second)
  const widest = second.findings.filter((f) => sizeRatio(f) === worst).map((f) => f.contaminant)
  return { contaminants: widest, turned: false }
}

/**
 * Whether another option would come first if the sizes lay nearer to the expected than to the cautious values
 * (all options alike, since they share the food and most assumptions); null when the first stays first.
 */
export function closeCallOf(brief: Brief, options: readonly Standing[]): Close | null {
  const ranked = options.filter((option) => option.rank !== null)
  const [first] = ranked
  if (!first || ranked.length < 2) return null
  const compare = compareOptions(brief.contaminants)
  for (const share of [...BETWEEN].reverse()) {
    const there = ranked.map((option) => optionAt(option, share))
    const best = there.reduce((a, b) => (compare(a, b) <= 0 ? a : b))
    if (best.equipment === first.equipment) continue
    const second = ranked.find(({ equipment }) => equipment === best.equipment)!
    return { first, second, ...hingeOf(second, share) }
  }
  return null
}
