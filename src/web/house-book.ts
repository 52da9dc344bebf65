import { loadRulebook, type Rulebook } from '../advice/rulebook.ts'

let book: Rulebook | null = null

/** The house's rule book, read once when first asked for. */
export function houseBook(): Rulebook {
  book ??= loadRulebook()
  return book
}
