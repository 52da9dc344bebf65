import type { Brief, Caution, Finding, Option, Reason, WhyNot } from '../../contract/index.ts'
import type { Ground, PlacedOutcome, Ranked } from '../stages.ts'
import { cautionsFrom } from './cautions.ts'
import { missedSizes } from './missed-sizes.ts'
import { toReason } from './reason.ts'
import { contaminantWords, mm, wordList } from './words.ts'

/** What a dearer option adds to the best fit: smaller expected sizes nobody asked for. */
const extraWords = (smallerByMm: number | null) =>
  smallerByMm === null
    ? 'It adds nothing you asked for.'
    : `It would find up to ${mm(smallerByMm)} less in size, which you did not ask for.`

function groundWords(brief: Brief, option: Ranked, ground: Ground): string {
  switch (ground.kind) {
    case 'excluded':
      return ground.by.text
    case 'ideal':
      return 'An ideal, shown for teaching; never ranked.'
    case 'best':
      return 'Meets every size you must find at the value that can be promised, with the least burden.'
    case 'meets-all-too': {
      const heavier =
        option.burden > ground.bestBurden
          ? `burden ${option.burden} against ${ground.bestBurden}`
          : 'no less burden'
      return `Meets every size too, at ${heavier}. ${extraWords(ground.smallerByMm)}`
    }
    case 'only-the-film':
      return 'A test on the bag finds smaller pieces than computed: the film alone stands in the way, and with film the computed sizes come out larger than practice sees.'
    case 'short':
      return shortcomings(brief, option)
  }
}

/** What a verdict short of best fit hangs on, ending the sentence that the verdict's words begin. */
function shortcomings(brief: Brief, { findings, verdict }: Ranked): string {
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

/** An outcome that rules the machine out, whatever the piece. */
const rulesOut = (o: PlacedOutcome) => o.type === 'excludes' && o.contaminant === null

function reasonsOf({ excluded, outcomes }: Ranked): Reason[] {
  const idle = (o: PlacedOutcome) => excluded && o.equipment !== null && OF_USE_ONLY.includes(o.type)
  return outcomes.filter((o) => !idle(o)).map((o) => toReason(o, rulesOut(o)))
}

/** Blocking rules, then missed sizes; where neither speaks against it, what puts another one before it. */
function whyNotOf(brief: Brief, { outcomes, findings, verdict }: Ranked, because: string): WhyNot[] {
  if (verdict === 'best-fit') return []
  const rules = outcomes.filter(rulesOut).map((o): WhyNot => ({ kind: 'rule', rule: o.rule, text: o.text }))
  const blocking = [...rules, ...missedSizes(brief, findings)]
  return blocking.length > 0 ? blocking : [{ kind: 'order', text: because }]
}

function beamOf({ detector: { linedUp } }: Ranked): Option['beam'] {
  const { machine } = linedUp
  return machine.family === 'xray' ? (machine.beam ?? 'down') : null
}

function settingsOf({ detector: { assessed } }: Ranked): Option['settings'] {
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
function cautionsOf(brief: Brief, { detector: { assessed }, outcomes, excluded }: Ranked): Caution[] {
  const labels = assessed.family === 'xray' ? [] : assessed.assessment.labels
  const said = new Set(excluded ? [] : outcomes.map(({ rule }) => rule))
  const unsaid = labels.filter(({ id }) => !said.has(SAID_BY[id] ?? ''))
  return [
    ...cautionsFrom(
      brief,
      outcomes.filter((o) => o.type === 'warns'),
    ),
    ...unsaid,
  ]
}

/** An option in words: the ground for its verdict, its reasons, what speaks against it, its cautions. */
export function optionWords(brief: Brief, ranked: Ranked): Option {
  const because = groundWords(brief, ranked, ranked.ground)
  return {
    equipment: ranked.equipment,
    label: ranked.label,
    family: ranked.family,
    rank: ranked.rank,
    burden: ranked.burden,
    verdict: ranked.verdict,
    build: null,
    askFor: null,
    because,
    beam: beamOf(ranked),
    settings: settingsOf(ranked),
    findings: [...ranked.findings],
    reasons: reasonsOf(ranked),
    whyNot: whyNotOf(brief, ranked, because),
    cautions: cautionsOf(brief, ranked),
  }
}
