import type { Brief, Family, Machine } from '../../contract/index.ts'
import { materials as everyMaterial } from '../../reference/index.ts'
import type { RemovalAssessment } from '../../separation/assessment.ts'
import type { Rulebook } from '../book/rule-schema.ts'
import { type RuleScope, scopeOf } from '../book/rule-scope.ts'
import { type FactSheet, joinSheets } from '../facts/fact-sheet.ts'
import { factsForBrief, factsForContaminant, factsForPoint } from '../facts/facts.ts'
import { factsForCoil } from '../facts/facts-coil.ts'
import { factsForCoilFinding } from '../facts/facts-coil-finding.ts'
import { factsForRemoval, factsForRemovalFinding } from '../facts/facts-removal.ts'
import { factsForXray } from '../facts/facts-xray.ts'
import { factsForXrayFinding } from '../facts/facts-xray-finding.ts'
import type { Materials } from '../facts/kinds/pack-kind.ts'
import type { Assessed, AssessedOption, Judged, Judgement, PlacedOutcome } from '../stages.ts'
import { decide } from './decide.ts'
import { withoutRuledOut } from './ruled-out.ts'

/** A machine that takes pieces out at a point, with its shares: judged like the others, never ranked. */
export interface AssessedRemoval {
  readonly family: RemovalAssessment['family']
  readonly pointIndex: number
  readonly machine: Pick<Machine, 'id'>
  readonly assessment: RemovalAssessment
}

type Machinery = AssessedOption | AssessedRemoval

interface Place {
  readonly pointIndex: number | null
  readonly equipment: string | null
  readonly family: Family | null
}

/** The stage: every rule asked of all that was assessed; of what takes pieces out only where it can work. */
export async function judgeAll(book: Rulebook, assessed: Assessed): Promise<Judged> {
  const { brief, detectors, removals } = assessed
  const options = detectors.flat().map((one) => one.assessed)
  const taken = removals.flatMap((there, pointIndex) =>
    there
      .filter(({ applicable }) => applicable)
      .map((assessment) => ({
        family: assessment.family,
        pointIndex,
        machine: { id: assessment.equipment },
        assessment,
      })),
  )
  const judgement = await judge(book, brief, [...options, ...taken], everyMaterial)
  return { ...assessed, detectors: withoutRuledOut(detectors, judgement.outcomes), book, ...judgement }
}

/** Asks every rule of the book everywhere it applies: the brief, each point, each option, each contaminant. */
export async function judge(
  book: Rulebook,
  brief: Brief,
  options: readonly Machinery[],
  materials: Materials,
): Promise<Judgement> {
  const sheets: FactSheet[] = []
  const outcomes: PlacedOutcome[] = []
  const keep = (sheet: FactSheet): FactSheet => {
    sheets.push(sheet)
    return sheet
  }
  const contaminants = brief.contaminants.map((_, i) => keep(factsForContaminant(brief, i, materials)))
  const ask = async (scope: RuleScope, place: Place, contaminant: number | null, facts: FactSheet) => {
    for (const outcome of await decide(book, scope, facts.facts))
      outcomes.push({ ...outcome, pointIndex: place.pointIndex, equipment: place.equipment, contaminant })
  }
  /** One place: asked once, then once for each contaminant with what is known of it there. */
  const askAt = async (
    place: Place,
    facts: FactSheet,
    finding: (contaminant: number) => FactSheet | null,
  ) => {
    const ground = place.family ?? (place.pointIndex === null ? 'brief' : 'point')
    await ask(scopeOf(ground, 'once'), place, null, facts)
    for (const [i, contaminant] of contaminants.entries()) {
      const found = finding(i)
      const all = joinSheets(facts, contaminant, ...(found ? [keep(found)] : []))
      await ask(scopeOf(ground, 'contaminant'), place, i, all)
    }
  }

  const ofBrief = keep(factsForBrief(brief, materials))
  await askAt({ pointIndex: null, equipment: null, family: null }, ofBrief, () => null)
  const ofPoints = brief.points.map((_, i) => keep(factsForPoint(brief, i, materials)))
  for (const [i, ofPoint] of ofPoints.entries()) {
    await askAt({ pointIndex: i, equipment: null, family: null }, joinSheets(ofBrief, ofPoint), () => null)
  }
  for (const option of options) {
    const ofPoint = ofPoints[option.pointIndex]
    if (!ofPoint) throw new Error(`option ${option.machine.id} names the point ${option.pointIndex}`)
    const place = { pointIndex: option.pointIndex, equipment: option.machine.id, family: option.family }
    const own = ownFacts(brief, option)
    const facts = joinSheets(ofBrief, ofPoint, keep(own))
    await askAt(place, facts, (contaminant) => findingFacts(brief, option, contaminant))
  }
  const all = joinSheets(...sheets)
  return { facts: all.facts, calculations: all.calculations, outcomes }
}

/** Facts of the machine at its point. A new family adds its case here and in findingFacts. */
function ownFacts(brief: Brief, option: Machinery): FactSheet {
  switch (option.family) {
    case 'xray':
      return factsForXray(brief, option.pointIndex, option.machine, option.assessment)
    case 'coil':
    case 'static-field':
      return factsForCoil(brief, option.pointIndex, option.machine, option.assessment)
    default:
      return factsForRemoval(brief, option.pointIndex, option.assessment)
  }
}

function findingFacts(brief: Brief, option: Machinery, contaminant: number): FactSheet {
  const { pointIndex, machine } = option
  switch (option.family) {
    case 'xray':
      return factsForXrayFinding(brief, pointIndex, option.machine, option.assessment, contaminant)
    case 'coil':
    case 'static-field':
      return factsForCoilFinding(brief, pointIndex, machine.id, option.assessment, contaminant)
    default:
      return factsForRemovalFinding(brief, pointIndex, option.assessment, contaminant)
  }
}
