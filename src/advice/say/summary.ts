import type { Brief, Option } from '../../contract/index.ts'
import { isExpected } from '../assess/meets.ts'
import { contaminantWords, wordList } from './why-not.ts'

/** Contaminants that no ranked machine at any point can find at any size computed. */
export function hopeless(brief: Brief, points: readonly { readonly options: readonly Option[] }[]): number[] {
  const ranked = points.flatMap(({ options }) => options.filter((o) => o.rank !== null))
  if (ranked.length === 0) return []
  return brief.contaminants
    .map((_, c) => c)
    .filter((c) => ranked.every((o) => o.findings.find((f) => f.contaminant === c)?.meets === 'cannot'))
}

/** Rules of the book that speak of the pack's outer sizes alone. */
const TOO_LARGE = ['too-wide', 'too-high', 'fan-too-wide']

/** The first machine kept out by nothing but the size of the pack, and whose sizes would all do. */
function onlyTooSmall(options: readonly Option[]): Option | undefined {
  return options.find(
    (o) =>
      o.rank !== null &&
      o.findings.every((f) => isExpected(f.meets)) &&
      o.whyNot.every((why) => why.kind !== 'rule' || TOO_LARGE.includes(why.rule)),
  )
}

function pointSentence(name: string, options: readonly Option[], many: boolean): string {
  const where = many ? `At “${name}” ` : ''
  const start = (text: string) => (where ? where + text : text.charAt(0).toUpperCase() + text.slice(1))
  const best = options.find((o) => o.verdict === 'best-fit')
  if (best)
    return start(`${best.label} is the best fit: it meets every size you must find, with the least burden.`)
  const test = options.find((o) => o.verdict === 'worth-a-test')
  if (test)
    return start(`no machine can promise every size; ${test.label} is the one worth a test on your product.`)
  const maybe = options.find((o) => o.verdict === 'conditional' && o.rank !== null)
  if (maybe) {
    const open = maybe.findings.some((f) => f.meets === 'open')
    const missed = maybe.findings.filter((f) => f.meets === 'no' || f.meets === 'cannot').length
    if (open && missed === 0)
      return start(`${maybe.label} comes first; set the sizes you must find to get a verdict.`)
    const near = maybe.findings.filter((f) => f.meets === 'maybe').length
    const promised = near > 0 ? `, and ${near} more can be expected but not promised` : ''
    return start(
      `${maybe.label} comes closest, but ${missed} of ${maybe.findings.length} contaminants ${missed === 1 ? 'stays' : 'stay'} out of its reach${promised}.`,
    )
  }
  if (options.length === 0) {
    return start('no detector is compared: what removes a share upstream cannot show that a pack is clean.')
  }
  const larger = onlyTooSmall(options)
  if (larger) {
    return start(
      `no machine compared here takes a pack of this size and finds what is asked. By its sizes ${larger.label} would: ask for a build large enough and its sizes there, or look where the food is still in smaller units.`,
    )
  }
  return start('no machine compared here suits this brief.')
}

/** One or two sentences a buyer can repeat: the honest no first, then the fit per point. */
export function summarise(
  brief: Brief,
  points: readonly { readonly name: string; readonly options: readonly Option[] }[],
): string {
  const lost = hopeless(brief, points)
  const no =
    lost.length > 0
      ? `No machine compared here finds ${wordList(lost.map((c) => contaminantWords(brief, c)))} in this product: that needs prevention. `
      : ''
  return no + points.map(({ name, options }) => pointSentence(name, options, points.length > 1)).join(' ')
}
