import { isExpected } from '../assess/meets.ts'
import type { PlacedOutcome, PointHeadline, Standing } from '../stages.ts'

type Told = Standing & { readonly outcomes: readonly Pick<PlacedOutcome, 'type' | 'contaminant' | 'rule'>[] }

/** Contaminants that no ranked option at any point can find at any size computed. */
export function hopeless(
  contaminants: number,
  points: readonly { readonly options: readonly Standing[] }[],
): number[] {
  const ranked = points.flatMap(({ options }) => options.filter((o) => o.rank !== null))
  if (ranked.length === 0) return []
  return [...Array(contaminants).keys()].filter((c) =>
    ranked.every((o) => o.findings.find((f) => f.contaminant === c)?.meets === 'cannot'),
  )
}

/** Rules of the book that speak of the pack's outer sizes alone. */
const TOO_LARGE = ['too-wide', 'too-high', 'fan-too-wide']

/** The first machine kept out by nothing but the size of the pack, and whose sizes would all do. */
const onlyTooSmall = (options: readonly Told[]): Told | undefined =>
  options.find(
    (o) =>
      o.rank !== null &&
      o.findings.every((f) => isExpected(f.meets)) &&
      o.outcomes.every(
        ({ type, contaminant, rule }) =>
          type !== 'excludes' || contaminant !== null || TOO_LARGE.includes(rule),
      ),
  )

/** What there is to say of a point: its best fit, else what is worth a test, else what comes closest. */
export function headlineAt(options: readonly Told[]): PointHeadline {
  const best = options.find((o) => o.verdict === 'best-fit')
  if (best) return { kind: 'best-fit', option: best }
  const test = options.find((o) => o.verdict === 'worth-a-test')
  if (test) return { kind: 'worth-a-test', option: test }
  const closest = options.find((o) => o.verdict === 'conditional' && o.rank !== null)
  if (closest) {
    const count = (...meets: string[]) => closest.findings.filter((f) => meets.includes(f.meets)).length
    const missed = count('no', 'cannot')
    if (count('open') > 0 && missed === 0) return { kind: 'sizes-open', option: closest }
    return { kind: 'closest', option: closest, missed, expected: count('maybe') }
  }
  if (options.length === 0) return { kind: 'no-detector' }
  const larger = onlyTooSmall(options)
  return larger ? { kind: 'too-small', option: larger } : { kind: 'none' }
}
