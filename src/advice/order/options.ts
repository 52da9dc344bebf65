import type { Brief, Caution, Finding, Option, Reason, WhyNot } from '../../contract/index.ts'
import type { LinedUp } from '../assess/line-up.ts'
import { isAnyMet, meetsAll, verdictOf } from '../assess/meets.ts'
import type { AssessedOption, PlacedOutcome } from '../decide/judge.ts'
import { cautionsFrom } from '../say/cautions.ts'
import { toReason } from '../say/reason.ts'
import { contaminantWords, missedSizes, wordList } from '../say/why-not.ts'
import { compareOptions } from './order.ts'

/** One machine at one point with all that is known of it, before the options are put in order. */
export interface Candidate {
  readonly linedUp: LinedUp
  readonly assessed: AssessedOption
  readonly findings: readonly Finding[]
  /** Fired rules that speak of this machine, and of its point where they ask or place something. */
  readonly outcomes: readonly PlacedOutcome[]
}

interface Judged extends Candidate {
  readonly excluded: boolean
  readonly burden: number
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

const mm = (value: number) => `${value.toFixed(value < 1 ? 2 : 1)} mm`

/** What a dearer option adds to the best fit, said in mm: smaller expected sizes nobody asked for. */
function extraWords(option: Judged, best: Judged): string {
  const gains = option.findings.flatMap((f, i) => {
    const other = best.findings[i]?.expectedMm
    return f.expectedMm !== null && other != null && f.expectedMm < other ? [other - f.expectedMm] : []
  })
  if (gains.length === 0) return 'It adds nothing you asked for.'
  return `It would find up to ${mm(Math.max(...gains))} less in size, which you did not ask for.`
}

function becauseOf(brief: Brief, judged: Judged, verdict: Option['verdict'], best: Judged | null): string {
  const excludes = judged.outcomes.find((o) => o.type === 'excludes' && o.contaminant === null)
  if (judged.excluded && excludes) return excludes.text
  if (!judged.linedUp.ranked) return 'An ideal, shown for teaching; never ranked.'
  if (verdict === 'best-fit')
    return 'Meets every size you must find at the value that can be promised, with the least burden.'
  if (meetsAll(judged.findings) && best) {
    const heavier =
      judged.burden > best.burden ? `burden ${judged.burden} against ${best.burden}` : 'no less burden'
    return `Meets every size too, at ${heavier}. ${extraWords(judged, best)}`
  }
  if (verdict === 'conditional' && !isAnyMet(judged.findings) && onlyTheFilm(judged))
    return 'A test on the bag finds smaller pieces than computed: the film alone stands in the way, and with film the computed sizes come out larger than practice sees.'
  return shortcomings(brief, judged.findings, verdict)
}

/** What a verdict short of best fit hangs on, ending the sentence that the verdict's words begin. */
function shortcomings(brief: Brief, findings: readonly Finding[], verdict: Option['verdict']): string {
  const named = (...meets: Finding['meets'][]) =>
    findings.filter((f) => meets.includes(f.meets)).map((f) => contaminantWords(brief, f.contaminant))
  const lost = named('no', 'cannot')
  const near = named('maybe')
  const open = named('open')
  if (verdict === 'not-suitable') return `None of the ${findings.length} contaminants is met.`
  if (verdict === 'worth-a-test') {
    return near.length > 0
      ? `Every size is expected to be found, but not to be promised: ${wordList(near)}.`
      : 'It may find them, but no size can be computed: only a test on the pack tells.'
  }
  const parts = [
    lost.length > 0 ? `something else takes care of ${wordList(lost)}` : '',
    near.length > 0 ? `a test on the product confirms ${wordList(near)}` : '',
    open.length > 0 ? `a size to find is set, or tested, for ${wordList(open)}` : '',
  ].filter(Boolean)
  const text = parts.join('; ')
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`
}

/** What a machine would need, and how to test it, is no matter where it is ruled out; what its point asks is. */
const OF_USE_ONLY = ['requires', 'tests', 'places']

function reasonsOf(judged: Judged): Reason[] {
  const idle = (o: PlacedOutcome) => judged.excluded && o.equipment !== null && OF_USE_ONLY.includes(o.type)
  return judged.outcomes
    .filter((o) => !idle(o))
    .map((o) => toReason(o, o.type === 'excludes' && o.contaminant === null))
}

/** Blocking rules, then missed sizes; where neither speaks against it, what puts another one before it. */
function whyNotOf(brief: Brief, judged: Judged, because: string): WhyNot[] {
  const rules = judged.outcomes
    .filter((o) => o.type === 'excludes' && o.contaminant === null)
    .map((o): WhyNot => ({ kind: 'rule', rule: o.rule, text: o.text }))
  const blocking = [...rules, ...missedSizes(brief, judged.findings)]
  return blocking.length > 0 ? blocking : [{ kind: 'order', text: because }]
}

function settingsOf(assessed: AssessedOption): Option['settings'] {
  if (assessed.family === 'xray') {
    const { kV, mA } = assessed.assessment.setting
    return { kV, mA: Number(mA.toPrecision(3)), frequenciesKHz: [] }
  }
  return { kV: null, mA: null, frequenciesKHz: [...assessed.assessment.frequenciesKHz] }
}

/** Labels of the physics that a rule says with more to it, by the rule. */
const SAID_BY: Readonly<Record<string, string>> = {
  'opening-larger-than-needed': 'opening-bought-for-another-pack',
  'lanes-side-by-side': 'lanes-share-a-coil',
  'missed-again': 'missed-above-a-found-size',
  'frozen-only': 'straight-from-the-freezer',
}

/** One caution per rule that warns, naming every contaminant, then those of the physics. */
function cautionsOf(brief: Brief, judged: Judged): Caution[] {
  const labels = judged.assessed.family === 'xray' ? [] : judged.assessed.assessment.labels
  const warned = judged.outcomes.filter((o) => o.type === 'warns')
  const said = new Set(judged.excluded ? [] : judged.outcomes.map(({ rule }) => rule))
  const unsaid = labels.filter(({ id }) => !said.has(SAID_BY[id] ?? ''))
  return [...cautionsFrom(brief, warned), ...unsaid]
}

/** A detector without computed sizes that reacts to everything asked: no verdict but a test. */
function onlyByTest({ assessed, findings, excluded }: Judged): boolean {
  return assessed.family === 'static-field' && !excluded && findings.every((f) => f.meets === 'open')
}

/**
 * Metallised film stands alone between a metal detector and its sizes: the food gives no signal, the machine would
 * find something asked for without the film, and only the computed sizes, known to come out larger than practice
 * sees, say no. That asks for a test on the bag; it is no ground to rule the machine out.
 */
function onlyTheFilm({ assessed, findings, excluded }: Judged): boolean {
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
function ownVerdict(judged: Judged): Option['verdict'] {
  if (onlyByTest(judged)) return 'worth-a-test'
  const plain = verdictOf(judged.findings, judged.excluded)
  return plain === 'not-suitable' && onlyTheFilm(judged) ? 'conditional' : plain
}

/** Options of one point in their order, ranked, with verdict and reasons. */
export function rankOptions(brief: Brief, candidates: readonly Candidate[]): Option[] {
  const judged = candidates.map(
    (candidate): Judged => ({
      ...candidate,
      burden: candidate.linedUp.burden,
      excluded: candidate.outcomes.some((o) => o.type === 'excludes' && o.contaminant === null),
    }),
  )
  const compare = compareOptions(brief.contaminants)
  const sorted = [...judged].sort((a, b) => {
    if (a.linedUp.ranked !== b.linedUp.ranked) return a.linedUp.ranked ? -1 : 1
    return compare(a, b)
  })
  const best = sorted.find((j) => j.linedUp.ranked && !j.excluded && meetsAll(j.findings)) ?? null
  let rank = 0
  return sorted.map((one): Option => {
    const plain = ownVerdict(one)
    const shown = one.linedUp.ranked ? plain : plain === 'worth-a-test' ? 'conditional' : plain
    const verdict = one === best ? 'best-fit' : shown
    const { machine } = one.linedUp
    const because = becauseOf(brief, one, verdict, best)
    return {
      equipment: machine.id,
      label: machine.label ?? machine.id,
      family: machine.family,
      rank: one.linedUp.ranked ? ++rank : null,
      burden: one.burden,
      verdict,
      build: null,
      askFor: null,
      because,
      settings: settingsOf(one.assessed),
      findings: [...one.findings],
      reasons: reasonsOf(one),
      whyNot: verdict === 'best-fit' ? [] : whyNotOf(brief, one, because),
      cautions: cautionsOf(brief, one),
    }
  })
}
