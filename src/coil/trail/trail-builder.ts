import type { Calculation } from '../../contract/index.ts'

/** Collects calculations under one prefix; an id is written once. */
export class TrailBuilder {
  readonly #prefix: string
  readonly #rows = new Map<string, Calculation>()

  constructor(prefix: string) {
    this.#prefix = prefix
  }

  /** Adds a row and gives back its full id; a second row of the same id is ignored. */
  add(
    id: string,
    label: string,
    symbol: string,
    value: Calculation['value'],
    unit: string,
    formula: string,
    inputs: readonly string[] = [],
    sources: readonly string[] = [],
  ): string {
    const full = `${this.#prefix}.${id}`
    if (!this.#rows.has(full)) {
      this.#rows.set(full, {
        id: full,
        label,
        symbol,
        value,
        unit,
        formula,
        inputs: [...inputs],
        sources: [...sources],
      })
    }
    return full
  }

  get rows(): readonly Calculation[] {
    return [...this.#rows.values()]
  }
}
