import {
  familyOf,
  isRecordGround,
  type RecordGround,
  type RuleScope,
  splitScope,
} from '../../book/rule-scope.ts'
import { ANSWER_FACTS } from './answer-facts.ts'
import { BRIEF_FACTS } from './brief-facts.ts'
import { COIL_FACTS } from './coil-facts.ts'
import { DETECTOR_FACTS } from './detector-facts.ts'
import type { FactDefinition, FactScope } from './fact-definition.ts'
import { RECORD_FACTS } from './record-facts.ts'
import { REMOVAL_FACTS } from './removal-facts.ts'
import { SEARCH_FACTS } from './search-facts.ts'
import { SIZE_FACTS } from './size-facts.ts'
import { XRAY_FACTS } from './xray-facts.ts'

/** Every fact a rule may name, by id. A new family adds its own list here. */
export const FACTS: ReadonlyMap<string, FactDefinition> = new Map(
  [
    ...BRIEF_FACTS,
    ...DETECTOR_FACTS,
    ...XRAY_FACTS,
    ...COIL_FACTS,
    ...REMOVAL_FACTS,
    ...ANSWER_FACTS,
    ...SIZE_FACTS,
    ...SEARCH_FACTS,
    ...RECORD_FACTS,
  ].map((fact) => [fact.id, fact]),
)

/** Scopes of facts that a rule of the register or the check plan sees. */
const SEEN_BY: Readonly<Record<RecordGround, readonly FactScope[]>> = {
  record: ['brief', 'record'],
  hazard: ['brief', 'contaminant', 'hazard'],
  control: ['brief', 'point', 'contaminant', 'control'],
  classed: ['brief', 'point', 'contaminant', 'control', 'classed'],
  check: ['brief', 'point', 'check'],
}

/** Scopes of facts that only the ground of the same name sees. */
const OF_ONE_GROUND: readonly FactScope[] = [
  'together',
  'close',
  'apart',
  'miss',
  'quote',
  'found',
  'finder',
  'change',
  'missing',
]

/** Grounds that belong to no one point. */
const WITHOUT_POINT: readonly string[] = [
  'brief',
  'line',
  'together',
  'quote',
  'found',
  'finder',
  'change',
  'missing',
]

/** Facts a rule of this scope may name: "xray:contaminant" sees the brief, the point, its machine and its finding. */
export function factsIn(scope: RuleScope): ReadonlyMap<string, FactDefinition> {
  const { ground, each } = splitScope(scope)
  const family = familyOf(ground)
  const visible = (fact: FactDefinition): boolean => {
    if (isRecordGround(ground)) return SEEN_BY[ground].includes(fact.scope)
    if (fact.families && (family === null || !fact.families.includes(family))) return false
    if (fact.scope === 'brief') return true
    if (fact.scope === 'line') return ['line', 'use', 'together'].includes(ground)
    if (fact.scope === 'row') return ground === 'line' && each === 'contaminant'
    if (fact.scope === 'use') return ground === 'use'
    if (fact.scope === 'place') return ground === 'option'
    if (OF_ONE_GROUND.includes(fact.scope)) return ground === fact.scope
    if (fact.scope === 'point') return !WITHOUT_POINT.includes(ground)
    if (fact.scope === 'contaminant') return each === 'contaminant'
    if (fact.scope === 'option') return family !== null
    return family !== null && each === 'contaminant'
  }
  return new Map([...FACTS].filter(([, fact]) => visible(fact)))
}
