import type { Calculation } from '../contract/index.ts'
import { type FigureId, figures } from '../reference/separation.ts'

const DIGITS = 5
const rounded = (value: Calculation['value']): Calculation['value'] =>
  typeof value === 'number' && Number.isFinite(value) ? Number(value.toPrecision(DIGITS)) : value

/** A range as one value of a calculation. */
export const asRange = (low: number, high: number): number | string =>
  low === high ? low : `${rounded(low)} to ${rounded(high)}`

/** What is said of one step of a calculation, beside its id. */
export interface Step {
  readonly label: string
  readonly symbol?: string
  readonly value: Calculation['value']
  readonly unit?: string
  readonly formula: string
  readonly inputs?: readonly string[]
  readonly sources?: readonly string[]
}

/** The calculations of one machine at one point; an id is written once and begins with the prefix. */
export class Trail {
  readonly #prefix: string
  readonly #steps = new Map<string, Calculation>()

  constructor(prefix: string) {
    this.#prefix = prefix
  }

  /** Adds a step and gives back its full id. */
  add(id: string, step: Step): string {
    const full = `${this.#prefix}.${id}`
    if (!this.#steps.has(full)) {
      this.#steps.set(full, {
        id: full,
        label: step.label,
        symbol: step.symbol ?? '',
        value: rounded(step.value),
        unit: step.unit ?? '',
        formula: step.formula,
        inputs: [...(step.inputs ?? [])],
        sources: [...(step.sources ?? [])],
      })
    }
    return full
  }

  /** A figure of the reference room with its range, as the end of a walk. */
  figure(id: FigureId): string {
    const { label, symbol, unit, range, source, mark, note } = figures[id]
    const formula = mark === 'A' ? 'assumed' : 'listed'
    return this.add(`figure.${id}`, {
      label,
      symbol,
      value: asRange(range[0], range[1]),
      unit,
      formula: note ? `${formula}; ${note}` : formula,
      sources: [source],
    })
  }

  /** A value of the brief, as the end of a walk. */
  entered(id: string, label: string, symbol: string, value: Calculation['value'], unit: string): string {
    return this.add(id, { label, symbol, value, unit, formula: 'from the brief' })
  }

  get steps(): readonly Calculation[] {
    return [...this.#steps.values()]
  }
}
