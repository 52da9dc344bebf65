import type { Brief, Finding } from '../../contract/index.ts'
import { isExpected, isPromised } from '../assess/meets.ts'
import type { Close, Standing } from '../stages.ts'
import { isUsable } from './combine.ts'
import { orderAmong, sizeRatio, WITHOUT_PROMISE } from './order.ts'

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
function hingeOf(second: Standing, share: number, worstRatio: number): Hinge {
  const there = optionAt(second, share)
  const turned = second.findings.flatMap((f, i) =>
    f.meets === 'maybe' && isPromised(there.findings[i]!.meets) ? [f.contaminant] : [],
  )
  if (turned.length > 0) return { contaminants: turned, turned: true }
  const widest = second.findings.filter((f) => sizeRatio(f) === worstRatio).map((f) => f.contaminant)
  return { contaminants: widest, turned: false }
}

/**
 * Whether another option would come first if the sizes lay nearer to the expected than to the cautious values
 * (all options alike, since they share the food and most assumptions); null when the first stays first, or
 * where nothing is there to choose from.
 */
export function closeCallOf(brief: Brief, options: readonly Standing[]): Close | null {
  const open = options.filter((option) => isUsable(option) && option.verdict !== 'not-suitable')
  const [first] = open
  if (!first || open.length < 2) return null
  for (const share of [...BETWEEN].reverse()) {
    const there = open.map((option) => optionAt(option, share))
    const { compare } = orderAmong(brief.contaminants, there)
    const best = there.reduce((a, b) => (compare(a, b) <= 0 ? a : b))
    if (best.equipment === first.equipment) continue
    const second = open.find(({ equipment }) => equipment === best.equipment)!
    const hinge = hingeOf(second, share, orderAmong(brief.contaminants, open).worstRatio(second))
    if (hinge.contaminants.length > 0) return { first, second, ...hinge }
  }
  return null
}
