import type { Brief, CloseCall, Finding, Option } from '../../contract/index.ts'
import { runsToDemonstrate } from '../../numerics/binomial.ts'
import { isExpected, isPromised } from '../assess/meets.ts'
import { orderable } from '../say/parting-words.ts'
import { contaminantWords, wordList } from '../say/why-not.ts'
import { compareOptions, sizeRatio, WITHOUT_PROMISE, worstRatio } from './order.ts'

/** Where between expected (0) and cautious (1) the order is looked at. */
const BETWEEN = [0, 0.25, 0.5, 0.75] as const

/** What a test on the product is to show: the chance a size stands for, at the usual confidence. */
const SHOWN = { chance: 0.9, confidence: 0.95 } as const

const mm = (value: number) => `${value.toFixed(value < 1 ? 2 : 1)} mm`

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

const optionAt = (option: Option, share: number): Option => ({
  ...option,
  findings: option.findings.map((finding) => findingAt(finding, share)),
})

interface Hinge {
  readonly contaminants: readonly number[]
  /** True where the second option meets them nearer to the expected values; false where only sizes compare. */
  readonly turned: boolean
}

/** What the second option's place hangs on: sizes it meets at that share and cannot promise, or its worst. */
function hingeOf(second: Option, share: number): Hinge {
  const there = optionAt(second, share)
  const turned = second.findings.flatMap((f, i) =>
    f.meets === 'maybe' && isPromised(there.findings[i]!.meets) ? [f.contaminant] : [],
  )
  if (turned.length > 0) return { contaminants: turned, turned: true }
  const worst = worstRatio(second)
  const widest = second.findings.filter((f) => sizeRatio(f) === worst).map((f) => f.contaminant)
  return { contaminants: widest, turned: false }
}

/** The pieces of a test, each with its size; those without a size to find are left out. */
function pieceList(brief: Brief, contaminants: readonly number[]): string {
  return wordList(
    contaminants.flatMap((c) => {
      const size = brief.contaminants[c]!.mustFindMm
      return size === null ? [] : [`${contaminantWords(brief, c)} of ${mm(size)}`]
    }),
  )
}

function inWords(brief: Brief, first: Option, second: Option, { contaminants, turned }: Hinge): CloseCall {
  const pieces = pieceList(brief, contaminants)
  const runs = runsToDemonstrate(SHOWN, 0)
  return {
    first: first.equipment,
    second: second.equipment,
    contaminants: [...contaminants],
    because: `The choice is close: ${first.label} comes first at the sizes that can be promised, ${second.label} nearer to the sizes that are expected. It hangs on ${pieces} with ${second.label}, and the stated assumptions do not settle it.`,
    test: turned
      ? `Test ${second.label} on your product, at line speed, with ${pieces} in the worst place: ${runs} of ${runs} found in fresh packs shows 9 in 10 with 95 % confidence, and then it meets what it is now only expected to meet. One miss leaves the order as it is.`
      : `Test both on your product, at line speed, with ${pieces} and the sizes around it in the worst place, ${runs} fresh packs a size: the one that finds the smaller size every time comes first.`,
  }
}

/**
 * Whether another option would come first if the sizes lay nearer to the expected than to the cautious values
 * (all options alike, since they share the food and most assumptions); null when the first stays first.
 */
export function closeCallOf(brief: Brief, options: readonly Option[]): CloseCall | null {
  const ranked = options.filter((option) => option.rank !== null)
  const [first] = ranked
  if (!first || ranked.length < 2) return null
  const compare = compareOptions(brief.contaminants)
  for (const share of [...BETWEEN].reverse()) {
    const there = ranked.map((option) => optionAt(option, share))
    const best = there.reduce((a, b) => (compare(orderable(a), orderable(b)) <= 0 ? a : b))
    if (best.equipment === first.equipment) continue
    const second = ranked.find(({ equipment }) => equipment === best.equipment)!
    return inWords(brief, first, second, hingeOf(second, share))
  }
  return null
}
