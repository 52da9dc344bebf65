import type { Contaminant, Finding, Option, Verdict } from '../../contract/index.ts'
import { isAsked, isExpected, isPromised } from '../assess/meets.ts'
import type { Parting, Standing } from '../stages.ts'

/**
 * The one order. Ranking, combination, close call, contrasts and headline read its result and know no other:
 * by verdict; then by the sizes left unmet, severity by severity from the gravest; then by trials on the product:
 * what was shown there comes before what is only computed, and that before what was tried and not shown; among those
 * that leave none unmet (of what any machine meets) by burden, then by fewest places left out; among the others by
 * the worst ratio of cautious size to size to find, then by burden. Said in words, never one score.
 */

/** What the order of options is made from. */
export type Orderable = Pick<Standing, 'excluded' | 'verdict' | 'burden' | 'findings'>

/** An option of an advice as the order sees it: excluded by a rule that speaks of the machine, not of its size. */
export const standing = (option: Option): Standing => ({
  ...option,
  excluded:
    option.askFor === null &&
    option.reasons.some(({ type, contaminant }) => type === 'excludes' && contaminant === null),
})

const SEVERITIES = [5, 4, 3, 2, 1] as const

/** Shown on the product at the size asked, or at a smaller one. */
export const isShown = ({ demonstrated, mustFindMm }: Finding): boolean =>
  demonstrated !== null && mustFindMm !== null && demonstrated.sizeMm <= mustFindMm

/** Tried on the product, and the size asked was not shown. */
export const isTriedOnly = (f: Finding): boolean =>
  isAsked(f) && !isShown(f) && (f.measured || f.demonstrated !== null)

/** What trials say of findings, least first: shown before only computed, and that before tried in vain. */
export const trialStanding = (findings: readonly Finding[]): number =>
  findings.filter(isTriedOnly).length - findings.filter(isShown).length

/** Where no size can be promised, the cautious size is taken as this multiple of the expected (judgement). */
export const WITHOUT_PROMISE = 1.5

/** Ratio of cautious (else expected) size to the size to find; null without one, infinite if not findable. */
export function sizeRatio(f: Finding): number | null {
  if (f.mustFindMm === null) return null
  const size = f.cautiousMm ?? (f.expectedMm === null ? null : f.expectedMm * WITHOUT_PROMISE)
  return size === null ? Number.POSITIVE_INFINITY : size / f.mustFindMm
}

/**
 * Contaminants by which options are told apart: asked for, and found at the size asked by at least one that is
 * not excluded. What no machine finds breaks no tie, unless none finds anything asked.
 */
export function tellingApart(
  options: readonly Pick<Orderable, 'excluded' | 'findings'>[],
): ReadonlySet<number> {
  const asked = (f: Finding) => isAsked(f) && f.meets !== 'cannot'
  const some = (wanted: (f: Finding) => boolean) =>
    new Set(
      options.flatMap(({ excluded, findings }) =>
        excluded ? [] : findings.filter(wanted).map((f) => f.contaminant),
      ),
    )
  const found = some((f) => isAsked(f) && isExpected(f.meets))
  return found.size > 0 ? found : some(asked)
}

const CLASS: Readonly<Record<Verdict, number>> = {
  'best-fit': 0,
  'worth-a-test': 1,
  conditional: 2,
  'no-build': 3,
  'not-suitable': 4,
}
const EXCLUDED = 5

/** Suitable with conditions though every size asked is met: something else has to be answered first. */
const isCapped = ({ verdict, findings }: Orderable): boolean => {
  const asked = findings.filter(isAsked)
  return verdict === 'conditional' && asked.length > 0 && asked.every(({ meets }) => isExpected(meets))
}

/** A ratio as it is said, to two figures: what a reader cannot see decides nothing. */
const asSaid = (ratio: number) => (Number.isFinite(ratio) ? Number(ratio.toPrecision(2)) : ratio)

/** The order among options of one point. */
export interface Order {
  readonly part: (a: Orderable, b: Orderable) => Parting
  readonly compare: (a: Orderable, b: Orderable) => number
  /** Contaminants of one severity that an option leaves unmet, of those that tell options apart. */
  readonly unmet: (option: Pick<Orderable, 'findings'>, severity?: number | null) => number[]
  /** Largest ratio among the sizes that tell options apart; 0 where there is none. */
  readonly worstRatio: (option: Pick<Orderable, 'findings'>) => number
}

/** The order of options of one point; `options` are all of them, because they say what tells two apart. */
export function orderAmong(
  contaminants: readonly Contaminant[],
  options: readonly Pick<Orderable, 'excluded' | 'findings'>[],
): Order {
  const telling = tellingApart(options)
  const counted = ({ findings }: Pick<Orderable, 'findings'>) =>
    findings.filter((f) => isAsked(f) && telling.has(f.contaminant))
  const unmet: Order['unmet'] = (option, severity = null) =>
    counted(option)
      .filter((f) => !isPromised(f.meets))
      .map((f) => f.contaminant)
      .filter((c) => severity === null || contaminants[c]!.severity === severity)
  const worstRatio: Order['worstRatio'] = (option) =>
    Math.max(0, ...counted(option).map((f) => sizeRatio(f) ?? 0))
  /** Place of the verdict, judged by what tells options apart; excluded last. */
  const classOf = (option: Orderable): number => {
    const { excluded, verdict } = option
    if (excluded) return EXCLUDED
    const its = counted(option)
    if (verdict === 'no-build' || !its.some(({ meets }) => isExpected(meets))) return CLASS[verdict]
    if (isCapped(option)) return CLASS.conditional
    if (its.every(({ meets }) => isPromised(meets))) return CLASS['best-fit']
    return its.every(({ meets }) => isExpected(meets)) ? CLASS['worth-a-test'] : CLASS.conditional
  }
  const partly = (option: Orderable) => option.findings.filter(({ meets }) => meets === 'partly').length

  const ratioStep = (a: Orderable, b: Orderable) => {
    const [one, other] = [asSaid(worstRatio(a)), asSaid(worstRatio(b))]
    return { step: 'ratio', severity: null, sign: one === other ? 0 : one - other } as const
  }
  const burdenStep = (a: Orderable, b: Orderable) =>
    ({ step: 'burden', severity: null, sign: a.burden - b.burden }) as const
  const partlyStep = (a: Orderable, b: Orderable) =>
    ({ step: 'partly', severity: null, sign: partly(a) - partly(b) }) as const
  const trialStep = (a: Orderable, b: Orderable) =>
    ({
      step: 'trial',
      severity: null,
      sign: trialStanding(counted(a)) - trialStanding(counted(b)),
    }) as const
  const unmetSteps = (a: Orderable, b: Orderable) =>
    SEVERITIES.map(
      (severity) =>
        ({ step: 'unmet', severity, sign: unmet(a, severity).length - unmet(b, severity).length }) as const,
    )

  const part: Order['part'] = (a, b) => {
    const [classA, classB] = [classOf(a), classOf(b)]
    if (classA !== classB) {
      const step = Math.max(classA, classB) === EXCLUDED ? 'excluded' : 'verdict'
      const sign = classA - classB
      const grave = unmetSteps(a, b).find((one) => one.sign !== 0)
      return { step, severity: grave && grave.sign * sign > 0 ? grave.severity : null, sign }
    }
    const nothingUnmet = unmet(a).length === 0 && unmet(b).length === 0
    const steps: readonly Parting[] = nothingUnmet
      ? [trialStep(a, b), burdenStep(a, b), partlyStep(a, b), ratioStep(a, b)]
      : [...unmetSteps(a, b), trialStep(a, b), ratioStep(a, b), burdenStep(a, b), partlyStep(a, b)]
    return steps.find(({ sign }) => sign !== 0) ?? { step: 'nothing', severity: null, sign: 0 }
  }
  return { part, compare: (a, b) => part(a, b).sign, unmet, worstRatio }
}
