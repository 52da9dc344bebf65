import type { Brief, Verdict } from '../../contract/index.ts'
import { isAnyMet, meetsAll, verdictOf } from '../assess/meets.ts'
import type { Detector, PlacedOutcome, Ranked } from '../stages.ts'
import { differ } from './contrast.ts'
import { orderAmong } from './order.ts'

/** One machine at one point with all that is known of it, before the options are put in order. */
export interface Candidate extends Detector {
  /** Fired rules that speak of this machine. */
  readonly outcomes: readonly PlacedOutcome[]
}

interface Weighed {
  readonly candidate: Candidate
  readonly ranked: boolean
  readonly excludedBy: PlacedOutcome | null
  readonly excluded: boolean
  readonly tooSmall: boolean
  readonly verdict: Verdict
  readonly burden: number
  readonly findings: Candidate['findings']
}

/** The fired outcomes that belong to an option. */
export function outcomesFor(
  outcomes: readonly PlacedOutcome[],
  pointIndex: number,
  equipment: string,
): PlacedOutcome[] {
  return outcomes.filter(
    (o) => o.outcome === 'fired' && o.pointIndex === pointIndex && o.equipment === equipment,
  )
}

/** Rules that speak of the outer size of the pack alone: a larger build of the same machine would take it. */
const OF_THE_BUILD = ['too-wide', 'too-high', 'fan-too-wide']

function weigh(candidate: Candidate): Weighed {
  const { linedUp, findings, outcomes } = candidate
  const against = outcomes.filter((o) => o.type === 'excludes' && o.contaminant === null)
  const excludedBy = against.find(({ rule }) => !OF_THE_BUILD.includes(rule)) ?? against[0] ?? null
  const tooSmall = against.length > 0 && against.every(({ rule }) => OF_THE_BUILD.includes(rule))
  const excluded = excludedBy !== null && !tooSmall
  return {
    candidate,
    ranked: linedUp.ranked,
    excludedBy,
    excluded,
    tooSmall,
    verdict: tooSmall
      ? isAnyMet(findings)
        ? 'no-build'
        : 'not-suitable'
      : ownVerdict(candidate, excluded, linedUp.ranked),
    burden: linedUp.burden,
    findings,
  }
}

/**
 * Most that an option finds smaller than another one, mm to two places, by expected sizes; null where it finds none
 * smaller that the model can tell apart.
 */
function smallerBy(option: Weighed, other: Weighed): number | null {
  const gains = option.findings.flatMap((f, i) => {
    const its = other.findings[i]?.expectedMm
    return f.expectedMm !== null && its != null && differ(f.expectedMm, its) && f.expectedMm < its
      ? [its - f.expectedMm]
      : []
  })
  const most = Math.round(100 * Math.max(0, ...gains)) / 100
  return most > 0 ? most : null
}

/** A detector without computed sizes that reacts to everything asked: no verdict but a test. */
const onlyByTest = ({ assessed, findings }: Candidate) =>
  assessed.family === 'static-field' && findings.every((f) => f.meets === 'open')

/**
 * Metallised film stands alone between a metal detector and its sizes: the food gives no signal, the machine would
 * find something asked for without the film, and only the computed sizes, known to come out larger than practice
 * sees, say no. That asks for a test on the bag; it is no ground to rule the machine out.
 */
function onlyTheFilm({ assessed, findings }: Candidate): boolean {
  if (assessed.family !== 'coil' || isAnyMet(findings)) return false
  const { layers, productSignal } = assessed.assessment
  return (
    !productSignal &&
    layers.length > 0 &&
    layers.every(({ film }) => film) &&
    findings.some((f) => f.bestMm !== null && f.mustFindMm !== null && f.bestMm <= f.mustFindMm)
  )
}

/** Something is asked for that caps the verdict until it is answered. */
const isOpen = ({ outcomes }: Candidate) => outcomes.some(({ open }) => open)

/** The verdict of one option where no other is better. */
function ownVerdict(candidate: Candidate, excluded: boolean, ranked: boolean): Verdict {
  if (!excluded && onlyByTest(candidate)) return ranked ? 'worth-a-test' : 'conditional'
  const plain = verdictOf(candidate.findings, excluded)
  const verdict = plain === 'not-suitable' && !excluded && onlyTheFilm(candidate) ? 'conditional' : plain
  return verdict === 'worth-a-test' && (!ranked || isOpen(candidate)) ? 'conditional' : verdict
}

/** Options of one point in their order, ranked, each with its verdict and what it rests on. */
export function rankOptions(brief: Brief, pointIndex: number, candidates: readonly Candidate[]): Ranked[] {
  const weighed = candidates.map(weigh)
  const { compare } = orderAmong(
    brief.contaminants,
    weighed.filter(({ ranked }) => ranked),
  )
  const sorted = weighed.sort((a, b) => {
    if (a.ranked !== b.ranked) return a.ranked ? -1 : 1
    return compare(a, b)
  })
  const isBest = (one: Weighed) => one.ranked && one.verdict === 'worth-a-test' && meetsAll(one.findings)
  const best = sorted.find(isBest) ?? null
  const { widthMm, heightMm } = brief.points[pointIndex]!
  let rank = 0
  return sorted.map((one): Ranked => {
    const { outcomes, ...detector } = one.candidate
    const { machine } = detector.linedUp
    const meetsAllToo = best !== null && one !== best && isBest(one)
    return {
      equipment: machine.id,
      label: machine.label ?? machine.id,
      family: machine.family,
      excluded: one.excluded,
      rank: one.ranked ? ++rank : null,
      burden: one.burden,
      verdict: one === best ? 'best-fit' : one.verdict,
      findings: one.findings,
      detector,
      outcomes,
      excludedBy: one.excludedBy,
      askFor: one.tooSmall ? { widthMm, heightMm } : null,
      onlyTheFilm: !one.excluded && !one.tooSmall && onlyTheFilm(one.candidate),
      behind: meetsAllToo ? { burden: best.burden, smallerByMm: smallerBy(one, best) } : null,
    }
  })
}
