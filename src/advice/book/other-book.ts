import type { Rulebook } from './rulebook.ts'

/** The book with one threshold moved; null where it has none of that id. */
export function withThreshold(book: Rulebook, id: string, value: number): Rulebook | null {
  const threshold = book.thresholds.get(id)
  if (!threshold) return null
  const thresholds = new Map(book.thresholds).set(id, { ...threshold, value })
  return Object.freeze({ ...book, thresholds, version: `${book.version}, ${id} ${value}` })
}

/** The book without one rule; null where it has none of that id. */
export function withoutRule(book: Rulebook, id: string): Rulebook | null {
  const rules = book.rules.filter((rule) => rule.id !== id)
  if (rules.length === book.rules.length) return null
  return Object.freeze({ ...book, rules, version: `${book.version}, without ${id}` })
}
