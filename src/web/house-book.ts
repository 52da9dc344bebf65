import { type BookText, loadRulebook, type Rulebook } from '../advice/book/rulebook.ts'

/** The rule book the pages and the API go by. */
export interface House {
  /** The house's own with the folders it was started with laid over it; read when first asked for. */
  readonly book: () => Rulebook
  /** The same with one more book laid over it; not kept. Throws RulebookError where it is not in order. */
  readonly under: (more: BookText) => Rulebook
}

/** A house with a company's own rule books, as folders, laid over the book; none gives the book as it is. */
export function houseOf(overlays: readonly string[] = []): House {
  let book: Rulebook | null = null
  return {
    book: () => {
      book ??= loadRulebook(overlays)
      return book
    },
    under: (more) => loadRulebook([...overlays, more]),
  }
}
