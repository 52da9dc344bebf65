import type { Brief, Verdict } from '../../contract/index.ts'
import { isAnyMet, meetsAll, verdictOf } from '../assess/meets.ts'
import type { Detector, Ground, PlacedOutcome, Ranked } from '../stages.ts'
import { compareOptions } from './order.ts'

/** One machine at one point with all that is known of it, before the options are put in order. */
export interface Candidate extends Detector {
  /** Fired rules that speak of this machine, and of its point where they ask or place something. */
  readonly outcomes: readonly PlacedOutcome[]
}

interface Weighed {
  readonly candidate: Candidate
  readonly ranked: boolean
  readonly excludedBy: PlacedOutcome | undefined
  readonly excluded: boolean
  readonly burden: number
  readonly findings: Candidate['findings']
}

const POINT_EFFECTS = ['requires', 'places', 'tests', 'weakens', 'favours']

/** The fired outcomes that belong to an option: its own, and those of its point that ask something of it. */
export function outcomesFor(
  outcomes: readonly PlacedOutcome[],
  pointIndex: number,
  equipment: string,
): PlacedOutcome[] {
  return outcomes.filter(
    (o) =>
      o.outcome === 'fired' &&
      o.pointIndex === pointIndex &&
      (o.equipment === equipment || (o.equipment === null && POINT_EFFECTS.includes(o.type))),
  )
}

function weigh(candidate: Candidate): Weighed {
  const { linedUp, findings, outcomes } = candidate
  const excludedBy = outcomes.find((o) => o.type === 'excludes' && o.contaminant === null)
  return {
    candidate,
    ranked: linedUp.ranked,
    excludedBy,
    excluded: excludedBy !== undefined,
    burden: linedUp.burden,
    findings,
  }
}

/** Most that an option finds smaller than another one, mm, by expected sizes; null where it finds none smaller. */
function smallerBy(option: Weighed, other: Weighed): number | null {
  const gains = option.findings.flatMap((f, i) => {
    const its = other.findings[i]?.expectedMm
    return f.expectedMm !== null && its != null && f.expectedMm < its ? [its - f.expectedMm] : []
  })
  return gains.length === 0 ? null : Math.max(...gains)
}

/** A detector without computed sizes that reacts to everything asked: no verdict but a test. */
const onlyByTest = ({ candidate, findings, excluded }: Weighed) =>
  candidate.assessed.family === 'static-field' && !excluded && findings.every((f) => f.meets === 'open')

/**
 * Metallised film stands alone between a metal detector and its sizes: the food gives no signal, the machine would
 * find something asked for without the film, and only the computed sizes, known to come out larger than practice
 * sees, say no. That asks for a test on the bag; it is no ground to rule the machine out.
 */
function onlyTheFilm({ candidate: { assessed }, findings, excluded }: Weighed): boolean {
  if (excluded || assessed.family !== 'coil') return false
  const { layers, productSignal } = assessed.assessment
  return (
    !productSignal &&
    layers.length > 0 &&
    layers.every(({ film }) => film) &&
    findings.some((f) => f.bestMm !== null && f.mustFindMm !== null && f.bestMm <= f.mustFindMm)
  )
}

/** The verdict of one option where no other is better. */
function ownVerdict(weighed: Weighed): Verdict {
  if (onlyByTest(weighed)) return 'worth-a-test'
  const plain = verdictOf(weighed.findings, weighed.excluded)
  const verdict = plain === 'not-suitable' && onlyTheFilm(weighed) ? 'conditional' : plain
  return !weighed.ranked && verdict === 'worth-a-test' ? 'conditional' : verdict
}

function groundOf(weighed: Weighed, verdict: Verdict, best: Weighed | null): Ground {
  if (weighed.excludedBy) return { kind: 'excluded', by: weighed.excludedBy }
  if (!weighed.ranked) return { kind: 'ideal' }
  if (verdict === 'best-fit') return { kind: 'best' }
  if (meetsAll(weighed.findings) && best)
    return { kind: 'meets-all-too', bestBurden: best.burden, smallerByMm: smallerBy(weighed, best) }
  if (verdict === 'conditional' && !isAnyMet(weighed.findings) && onlyTheFilm(weighed))
    return { kind: 'only-the-film' }
  return { kind: 'short' }
}

/** Options of one point in their order, ranked, each with its verdict and the ground for it. */
export function rankOptions(brief: Brief, candidates: readonly Candidate[]): Ranked[] {
  const compare = compareOptions(brief.contaminants)
  const sorted = candidates.map(weigh).sort((a, b) => {
    if (a.ranked !== b.ranked) return a.ranked ? -1 : 1
    return compare(a, b)
  })
  const best = sorted.find((one) => one.ranked && !one.excluded && meetsAll(one.findings)) ?? null
  let rank = 0
  return sorted.map((one): Ranked => {
    const verdict = one === best ? 'best-fit' : ownVerdict(one)
    const { outcomes, ...detector } = one.candidate
    const { machine } = detector.linedUp
    return {
      equipment: machine.id,
      label: machine.label ?? machine.id,
      family: machine.family,
      excluded: one.excluded,
      rank: one.ranked ? ++rank : null,
      burden: one.burden,
      verdict,
      findings: one.findings,
      detector,
      outcomes,
      ground: groundOf(one, verdict, best),
    }
  })
}
