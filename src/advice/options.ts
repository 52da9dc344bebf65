import type { Brief, Caution, Finding, Option, Reason, WhyNot } from '../contract/index.ts'
import type { AssessedOption, PlacedOutcome } from './judge.ts'
import type { LinedUp } from './line-up.ts'
import { meetsAll, verdictOf } from './meets.ts'
import { compareOptions } from './order.ts'
import { toReason } from './reason.ts'
import { missedSizes } from './why-not.ts'

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

function becauseOf(judged: Judged, verdict: Option['verdict'], best: Judged | null): string {
  const excludes = judged.outcomes.find((o) => o.type === 'excludes' && o.contaminant === null)
  if (judged.excluded && excludes) return excludes.text
  if (!judged.linedUp.ranked) return 'An ideal, shown for teaching; never ranked.'
  if (verdict === 'best-fit')
    return 'Meets every size you must find at the value that can be promised, with the least burden.'
  const count = (meets: Finding['meets']) => judged.findings.filter((f) => f.meets === meets).length
  if (meetsAll(judged.findings) && best) {
    const heavier =
      judged.burden > best.burden ? `burden ${judged.burden} against ${best.burden}` : 'no less burden'
    return `Meets every size too, at ${heavier}. ${extraWords(judged, best)}`
  }
  const parts = [
    count('yes') > 0 ? `${count('yes')} met` : '',
    count('maybe') > 0 ? `${count('maybe')} within reach but not to be promised` : '',
    count('no') > 0 ? `${count('no')} missed` : '',
    count('cannot') > 0 ? `${count('cannot')} that it cannot find` : '',
    count('open') > 0 ? `${count('open')} without a size to find` : '',
  ].filter(Boolean)
  return `Of ${judged.findings.length} contaminants: ${parts.join(', ')}.`
}

function reasonsOf(judged: Judged): Reason[] {
  return judged.outcomes.map((o) => toReason(o, o.type === 'excludes' && o.contaminant === null))
}

function whyNotOf(brief: Brief, judged: Judged): WhyNot[] {
  const rules = judged.outcomes
    .filter((o) => o.type === 'excludes' && o.contaminant === null)
    .map((o): WhyNot => ({ kind: 'rule', rule: o.rule, text: o.text }))
  return [...rules, ...missedSizes(brief, judged.findings)]
}

function settingsOf(assessed: AssessedOption): Option['settings'] {
  if (assessed.family === 'xray') {
    const { kV, mA } = assessed.assessment.setting
    return { kV, mA: Number(mA.toPrecision(3)), frequenciesKHz: [] }
  }
  return { kV: null, mA: null, frequenciesKHz: [] }
}

function cautionsOf(judged: Judged): Caution[] {
  return judged.outcomes
    .filter((o) => o.type === 'warns')
    .map((o) => ({ id: o.rule, text: o.text, sources: [...o.sources] }))
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
    const plain = verdictOf(one.findings, one.excluded)
    const shown = one.linedUp.ranked ? plain : plain === 'worth-a-test' ? 'conditional' : plain
    const verdict = one === best ? 'best-fit' : shown
    const { machine } = one.linedUp
    return {
      equipment: machine.id,
      label: machine.label ?? machine.id,
      family: machine.family,
      rank: one.linedUp.ranked ? ++rank : null,
      burden: one.burden,
      verdict,
      because: becauseOf(one, verdict, best),
      settings: settingsOf(one.assessed),
      findings: [...one.findings],
      reasons: reasonsOf(one),
      whyNot: verdict === 'best-fit' ? [] : whyNotOf(brief, one),
      cautions: cautionsOf(one),
    }
  })
}
