import type { Brief, Calculation, Fact } from '../../contract/index.ts'
import { FACTS } from './list/fact-list.ts'

/** Facts of one scope with the small calculations they came from. */
export interface FactSheet {
  readonly facts: readonly Fact[]
  readonly calculations: readonly Calculation[]
}

type Value = string | number | boolean | null

/**
 * Collects the facts of one scope. Labels and units come from the fact list. A value of null means "there is
 * one, and it is not known"; a fact left out means "there is no such thing here" (a grain size of a liquid).
 */
export class FactWriter {
  readonly scope: string
  readonly #brief: Brief
  readonly #facts: Fact[] = []
  readonly #calculations: Calculation[] = []

  constructor(scope: string, brief: Brief) {
    this.scope = scope
    this.#brief = brief
  }

  /** From the brief; `paths` from the most particular to the most general place it may have been given. */
  fromBrief(id: string, value: Value, ...paths: string[]): void {
    this.#add({ id, value, origin: isEntered(this.#brief, paths) ? 'entered' : 'assumed' })
  }

  /** From a machine: entered when the brief describes it and gives the value, assumed otherwise. */
  fromMachine(id: string, value: Value, machineId: string, given = true): void {
    const described = this.#brief.equipment.some((item) => typeof item !== 'string' && item.id === machineId)
    this.#add({ id, value, origin: described && given ? 'entered' : 'assumed' })
  }

  /** Looked up in the reference, or worked out by the physics under the calculation named. */
  computed(id: string, value: Value, calculation?: string): void {
    this.#add({ id, value, origin: 'computed', ...(calculation ? { calculation } : {}) })
  }

  /** Worked out here from other facts; the formula becomes a calculation of the trace. */
  derived(
    id: string,
    value: number | null,
    symbol: string,
    formula: string,
    inputs: readonly string[],
  ): void {
    const { label, unit } = definitionOf(id)
    const calculation = `${this.scope}.${id}`
    this.#calculations.push({
      id: calculation,
      label,
      symbol,
      value,
      unit,
      formula,
      inputs: [...inputs],
      sources: [],
    })
    this.computed(id, value, calculation)
  }

  sheet(): FactSheet {
    return { facts: this.#facts, calculations: this.#calculations }
  }

  #add(fact: Pick<Fact, 'id' | 'value' | 'origin' | 'calculation'>): void {
    const { label, unit } = definitionOf(fact.id)
    this.#facts.push({ ...fact, scope: this.scope, label, unit })
  }
}

/** Several sheets as one, in order. */
export const joinSheets = (...sheets: readonly FactSheet[]): FactSheet => ({
  facts: sheets.flatMap((sheet) => sheet.facts),
  calculations: sheets.flatMap((sheet) => sheet.calculations),
})

function definitionOf(id: string) {
  const definition = FACTS.get(id)
  if (!definition) throw new Error(`no fact ${JSON.stringify(id)} in the fact list; add it there first`)
  return definition
}

/** Walks a dotted path ("points.0.heightMm") through the brief as it was given. */
function givenAt(brief: Brief, path: string): unknown {
  let at: unknown = brief.given
  for (const key of path.split('.')) at = (at as Record<string, unknown> | undefined | null)?.[key]
  return at
}

function isEntered(brief: Brief, paths: readonly string[]): boolean {
  for (const path of paths) {
    if (brief.assumed.some((assumption) => assumption.path === path)) return false
    if (givenAt(brief, path) !== undefined) return true
  }
  return false
}
