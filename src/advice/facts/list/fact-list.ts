import { familyOf, type RuleScope, splitScope } from '../../book/rule-scope.ts'
import { BRIEF_FACTS } from './brief-facts.ts'
import { COIL_FACTS } from './coil-facts.ts'
import { DETECTOR_FACTS } from './detector-facts.ts'
import type { FactDefinition } from './fact-definition.ts'
import { REMOVAL_FACTS } from './removal-facts.ts'
import { XRAY_FACTS } from './xray-facts.ts'

/** Every fact a rule may name, by id. A new family adds its own list here. */
export const FACTS: ReadonlyMap<string, FactDefinition> = new Map(
  [...BRIEF_FACTS, ...DETECTOR_FACTS, ...XRAY_FACTS, ...COIL_FACTS, ...REMOVAL_FACTS].map((fact) => [
    fact.id,
    fact,
  ]),
)

/** Facts a rule of this scope may name: "xray:contaminant" sees the brief, the point, its machine and its finding. */
export function factsIn(scope: RuleScope): ReadonlyMap<string, FactDefinition> {
  const { ground, each } = splitScope(scope)
  const family = familyOf(ground)
  const visible = (fact: FactDefinition): boolean => {
    if (fact.families && (family === null || !fact.families.includes(family))) return false
    if (fact.scope === 'brief') return true
    if (fact.scope === 'point') return ground !== 'brief'
    if (fact.scope === 'contaminant') return each === 'contaminant'
    if (fact.scope === 'option') return family !== null
    return family !== null && each === 'contaminant'
  }
  return new Map([...FACTS].filter(([, fact]) => visible(fact)))
}
