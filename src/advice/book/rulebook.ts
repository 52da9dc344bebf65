import { fileURLToPath } from 'node:url'
import { type BookFiles, readBook } from './book-files.ts'
import type { BookText } from './book-folder.ts'
import { lintRulebook } from './rule-lint.ts'
import { RulebookError } from './rule-problem.ts'
import type { Rulebook } from './rule-schema.ts'

export type { BookText } from './book-folder.ts'
export type { BookRule, Rulebook } from './rule-schema.ts'

const HOUSE_BOOK = fileURLToPath(new URL('../../../rules/', import.meta.url))

/** What changed in each book, with its name where there are several. */
const changesOf = (books: readonly BookFiles[]): Rulebook['changelog'] =>
  books.flatMap(({ book }) =>
    book.changelog.map(({ version, changes }) => ({
      version: books.length > 1 ? `${book.name} ${version}` : version,
      changes,
    })),
  )

/**
 * The house's rule book with a company's own books (folders, or held in memory) laid over it in the order given: same
 * files, later wins
 * by id (rules, thresholds and sources), and every reason says which book it comes from. A book may leave out
 * any file except its rules. Throws RulebookError with every problem found, each naming file, rule and what is
 * allowed.
 */
export function loadRulebook(
  overlays: readonly (string | BookText)[] = [],
  house: string = HOUSE_BOOK,
): Rulebook {
  const problems: string[] = []
  const books = [house, ...overlays].map((book) => readBook(book, problems))
  const renamed = new Map(books.flatMap(({ book }) => Object.entries(book.renamed ?? {})))
  for (const { file, id } of books.flatMap(({ rules }) => rules)) {
    const now = renamed.get(id)
    if (now) problems.push(`${file}: rule "${id}": this id was renamed to "${now}"; use that`)
  }
  if (problems.length > 0) throw new RulebookError(problems)
  const byId = <T extends { readonly id: string }>(pick: (book: BookFiles) => readonly T[]) =>
    new Map(books.flatMap(pick).map((item) => [item.id, item]))
  const rulebook: Rulebook = Object.freeze({
    version: books.map(({ book }) => `${book.name} ${book.version}`).join(' + '),
    changelog: changesOf(books),
    renamed,
    rules: [...byId((book) => book.rules).values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    thresholds: byId((book) => book.thresholds),
    sources: byId((book) => book.sources),
    baseBrief: books.findLast((book) => book.baseBrief !== null)?.baseBrief ?? {},
  })
  const wrong = lintRulebook(rulebook)
  if (wrong.length > 0) throw new RulebookError(wrong)
  return rulebook
}
