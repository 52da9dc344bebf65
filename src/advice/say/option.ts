import type { Brief, Caution, Option, Reason, WhyNot } from '../../contract/index.ts'
import type { LineOutcome, Missed, PlacedOutcome, Ranked } from '../stages.ts'
import { cautionsFrom } from './cautions.ts'
import { missedSizes } from './missed-sizes.ts'
import { notedFindings } from './noted.ts'
import { toReason } from './reason.ts'
import { joined, saidOf } from './said.ts'

/** An outcome that rules the machine out, whatever the piece. */
const rulesOut = (o: PlacedOutcome) => o.type === 'excludes' && o.contaminant === null

/** Of a machine that is ruled out only what rules it out is said. */
const spokenOf = ({ excluded, outcomes }: Ranked) =>
  excluded ? outcomes.filter(rulesOut) : outcomes.filter(({ type }) => type !== 'notes')

const reasonsOf = (ranked: Ranked): Reason[] => spokenOf(ranked).map((o) => toReason(o, rulesOut(o)))

/** Blocking rules, then missed sizes; where neither speaks against it, what puts another one before it. */
function whyNotOf({ outcomes, verdict }: Ranked, missed: readonly WhyNot[], because: string): WhyNot[] {
  if (verdict === 'best-fit') return []
  const rules = outcomes.filter(rulesOut).map((o): WhyNot => ({ kind: 'rule', rule: o.rule, text: o.text }))
  const blocking = [...rules, ...missed]
  return blocking.length > 0 ? blocking : [{ kind: 'order', text: because }]
}

function buildOf({ detector: { linedUp } }: Ranked): Option['build'] {
  const { machine } = linedUp
  return machine.family === 'xray' ? (machine.build ?? null) : null
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

/** One caution per rule that warns, naming every contaminant. */
const cautionsOf = (brief: Brief, ranked: Ranked): Caution[] =>
  cautionsFrom(
    brief,
    spokenOf(ranked).filter((o) => o.type === 'warns'),
  )

/**
 * An option in words: the ground for its verdict, its reasons, what speaks against it, its cautions. `misses` are the
 * sizes it misses, `said` is what the rules say of it in its place.
 */
export function optionWords(
  brief: Brief,
  ranked: Ranked,
  misses: readonly Missed[],
  said: readonly LineOutcome[],
): Option {
  const grounds = said.filter(({ type }) => type === 'grounds')
  const missed = missedSizes(
    misses,
    said.filter(({ type }) => type === 'misses'),
  )
  const because = joined(grounds)
  const findings = notedFindings(ranked)
  return {
    equipment: ranked.equipment,
    label: ranked.label,
    family: ranked.family,
    rank: ranked.rank,
    burden: ranked.burden,
    verdict: ranked.verdict,
    build: buildOf(ranked),
    askFor: ranked.askFor,
    because,
    beam: beamOf(ranked),
    grounds: grounds.map(saidOf),
    settings: settingsOf(ranked),
    findings,
    reasons: reasonsOf(ranked),
    whyNot: whyNotOf(ranked, missed, because),
    cautions: cautionsOf(brief, ranked),
  }
}
