/** A machine as a set sees it. */
export interface Candidate {
  readonly key: string
  readonly burden: number
}

/** Kinds of products told apart by what meets what in them. */
const MOST_KINDS = 10_000
/** Machines of one set: more than three at the points of a line is another line. */
const MOST_MACHINES = 3

/**
 * Which machines meet which of the sizes asked, counted over products: products alike in this are one kind, so that
 * what is held grows with the kinds, not with the products.
 */
export class Coverage {
  readonly #kinds = new Map<string, { readonly asked: readonly (readonly string[])[]; count: number }>()
  #left = 0

  /** For each size the product asks, the machines that meet it. A product that asks none says nothing. */
  note(asked: readonly (readonly string[])[]): void {
    if (asked.length === 0) return
    const key = JSON.stringify([...new Set(asked.map((keys) => keys.join('\n')))].sort())
    const known = this.#kinds.get(key)
    if (known) known.count++
    else if (this.#kinds.size < MOST_KINDS) this.#kinds.set(key, { asked, count: 1 })
    else this.#left++
  }

  /** Products that ask a size. */
  get asking(): number {
    return [...this.#kinds.values()].reduce((sum, { count }) => sum + count, this.#left)
  }

  /** Products in which this set meets everything asked. */
  metBy(set: readonly string[]): number {
    return this.#sum(({ asked, count }) => (asked.every((keys) => meetsOne(keys, set)) ? count : 0))
  }

  /** Sizes asked, over all products, that this set meets. */
  sizesMetBy(set: readonly string[]): number {
    return this.#sum(({ asked, count }) => count * asked.filter((keys) => meetsOne(keys, set)).length)
  }

  /**
   * The smallest set that meets everything in as many products as any set of three, then as many sizes; among equals
   * the one of least cost and effort. Empty where nothing is met.
   */
  smallestSet(candidates: readonly Candidate[]): readonly Candidate[] {
    const sets = subsets(candidates, MOST_MACHINES).map((set) => {
      const keys = set.map(({ key }) => key)
      return {
        set,
        met: this.metBy(keys),
        sizes: this.sizesMetBy(keys),
        burden: set.reduce((sum, { burden }) => sum + burden, 0),
      }
    })
    sets.sort(
      (a, b) => b.met - a.met || b.sizes - a.sizes || a.set.length - b.set.length || a.burden - b.burden,
    )
    const best = sets[0]
    return best && best.sizes > 0 ? best.set : []
  }

  #sum(of: (kind: { readonly asked: readonly (readonly string[])[]; readonly count: number }) => number) {
    return [...this.#kinds.values()].reduce((sum, kind) => sum + of(kind), 0)
  }
}

const meetsOne = (keys: readonly string[], set: readonly string[]) => keys.some((key) => set.includes(key))

function subsets<Value>(values: readonly Value[], most: number): Value[][] {
  const all: Value[][] = [[]]
  for (const value of values) for (const set of [...all]) if (set.length < most) all.push([...set, value])
  return all
}
