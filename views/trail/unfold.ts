import type { Advice, Calculation, Fact } from '../../src/contract/advice.ts'

/** One line of a trail; a calculation met before is only pointed to, so that every trail ends. */
export type Step =
  | { kind: 'calculation'; calculation: Calculation; inputs: readonly Step[] }
  | { kind: 'again'; calculation: Calculation }
  | { kind: 'fact'; fact: Fact }
  | { kind: 'unnamed'; id: string }

/** A calculation with everything that went into it, depth first; null where there is none of that id. */
export function unfold(trace: Advice['trace'], id: string): Step | null {
  const calculations = new Map(trace.calculations.map((one) => [one.id, one]))
  const facts = new Map(trace.facts.map((one) => [one.id, one]))
  const seen = new Set<string>()
  const stepOf = (input: string): Step => {
    const calculation = calculations.get(input)
    if (calculation) {
      if (seen.has(input)) return { kind: 'again', calculation }
      seen.add(input)
      return { kind: 'calculation', calculation, inputs: calculation.inputs.map(stepOf) }
    }
    const fact = facts.get(input)
    if (!fact) return { kind: 'unnamed', id: input }
    return fact.calculation && calculations.has(fact.calculation)
      ? stepOf(fact.calculation)
      : { kind: 'fact', fact }
  }
  return calculations.has(id) ? stepOf(id) : null
}

/** Ids of all sources a trail rests on, in the order they are met. */
export function sourcesOf(step: Step): string[] {
  if (step.kind !== 'calculation') return []
  return [...step.calculation.sources, ...step.inputs.flatMap(sourcesOf)]
}
