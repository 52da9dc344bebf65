import type { Brief, Caution, Option, Reason, WhyNot } from '../../contract/index.ts'
import type { LineOutcome, PlacedOutcome, Ranked } from '../stages.ts'
import { cautionsFrom } from './cautions.ts'
import { missedSizes } from './missed-sizes.ts'
import { toReason } from './reason.ts'
import { joined, saidOf } from './said.ts'

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
export function optionWords(brief: Brief, ranked: Ranked, grounds: readonly LineOutcome[]): Option {
  const because = joined(grounds)
  return {
    equipment: ranked.equipment,
    label: ranked.label,
    family: ranked.family,
    rank: ranked.rank,
    burden: ranked.burden,
    verdict: ranked.verdict,
    build: null,
    askFor: ranked.askFor,
    because,
    beam: beamOf(ranked),
    grounds: grounds.map(saidOf),
    settings: settingsOf(ranked),
    findings: [...ranked.findings],
    reasons: reasonsOf(ranked),
    whyNot: whyNotOf(brief, ranked, because),
    cautions: cautionsOf(brief, ranked),
  }
}
