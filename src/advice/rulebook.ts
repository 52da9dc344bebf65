import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { z } from 'zod'
import { lintRulebook } from './rule-lint.ts'
import { RulebookError } from './rule-problem.ts'
import {
  type Book,
  type BookRule,
  bookSchema,
  type Rulebook,
  type RuleSource,
  ruleFileSchema,
  ruleSourceSchema,
  type Threshold,
  thresholdSchema,
} from './rule-schema.ts'

export type { BookRule, Rulebook } from './rule-schema.ts'

/** Files of a book that hold no rules. */
const BOOK_FILES = ['book.json', 'thresholds.json', 'sources.json', 'base-brief.json']

const HOUSE_BOOK = fileURLToPath(new URL('../../rules/', import.meta.url))

/**
 * The house's rule book with a company's own books laid over it in the order given: same files, later wins
 * by id (rules, thresholds and sources), and every reason says which book it comes from. A book may leave out
 * any file except its rules. Throws RulebookError with every problem found, each naming file, rule and what is
 * allowed.
 */
export function loadRulebook(overlays: readonly string[] = [], house: string = HOUSE_BOOK): Rulebook {
  const problems: string[] = []
  const books = [house, ...overlays].map((directory) => readBook(directory, problems))
  if (problems.length > 0) throw new RulebookError(problems)
  const byId = <T extends { readonly id: string }>(pick: (book: BookFiles) => readonly T[]) =>
    new Map(books.flatMap(pick).map((item) => [item.id, item]))
  const rulebook: Rulebook = Object.freeze({
    version: books.map(({ book }) => `${book.name} ${book.version}`).join(' + '),
    changelog: books[0]!.book.changelog,
    rules: [...byId((book) => book.rules).values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    thresholds: byId((book) => book.thresholds),
    sources: byId((book) => book.sources),
    baseBrief: books.findLast((book) => book.baseBrief !== null)?.baseBrief ?? {},
  })
  const wrong = lintRulebook(rulebook)
  if (wrong.length > 0) throw new RulebookError(wrong)
  return rulebook
}

interface BookFiles {
  readonly book: Book
  readonly rules: readonly BookRule[]
  readonly thresholds: readonly (Threshold & { readonly book: string })[]
  readonly sources: readonly RuleSource[]
  readonly baseBrief: Record<string, unknown> | null
}

function readBook(directory: string, problems: string[]): BookFiles {
  const files = filesIn(directory, problems)
  const read = <T>(file: string, schema: z.ZodType<T>): T | null =>
    files.includes(file) ? readFile(join(directory, file), file, schema, problems) : null
  const name = basename(directory)
  const book = read('book.json', bookSchema) ?? { name, version: 'without version', changelog: [] }
  const rules = files
    .filter((file) => file.endsWith('.json') && !BOOK_FILES.includes(file))
    .flatMap((file) =>
      (read(file, ruleFileSchema)?.rules ?? []).map((rule) => ({ ...rule, book: book.name, file })),
    )
  sayTwice(rules, problems)
  return {
    book,
    rules,
    thresholds: (read('thresholds.json', z.array(thresholdSchema)) ?? []).map((threshold) => ({
      ...threshold,
      book: book.name,
    })),
    sources: read('sources.json', z.array(ruleSourceSchema)) ?? [],
    baseBrief: read('base-brief.json', z.record(z.string(), z.unknown())),
  }
}

function filesIn(directory: string, problems: string[]): readonly string[] {
  try {
    return readdirSync(directory).sort()
  } catch {
    problems.push(
      `${directory}: no such folder; a rule book is a folder of JSON files (rules, thresholds.json, sources.json)`,
    )
    return []
  }
}

function readFile<T>(path: string, file: string, schema: z.ZodType<T>, problems: string[]): T | null {
  let content: unknown
  try {
    content = JSON.parse(readFileSync(path, 'utf8'))
  } catch (error) {
    problems.push(`${file}: not readable as JSON: ${(error as Error).message}`)
    return null
  }
  const parsed = schema.safeParse(content)
  if (parsed.success) return parsed.data
  for (const issue of parsed.error.issues)
    problems.push(`${file}: ${where(content, issue.path)}${said(issue, schema)}`)
  return null
}

/** Names the rule, threshold or source an issue is in, then the way to the place. */
function where(content: unknown, path: readonly PropertyKey[]): string {
  const list = path[0] === 'rules' ? (content as { rules?: unknown[] }).rules : content
  const steps = path[0] === 'rules' ? path.slice(1) : path
  const item = Array.isArray(list) && typeof steps[0] === 'number' ? list[steps[0]] : undefined
  const id = (item as { id?: unknown } | undefined)?.id
  if (id === undefined) return path.length > 0 ? `${path.map(String).join('.')}: ` : ''
  const rest = steps.slice(1).map(String).join('.')
  return `"${String(id)}": ${rest ? `${rest}: ` : ''}`
}

function said(issue: z.core.$ZodIssue, schema: z.ZodType): string {
  if (issue.code !== 'unrecognized_keys') return issue.message
  return `${issue.message}; allowed: ${allowedKeys(schema, issue.path).join(', ')}`
}

/** Keys the schema allows at the place a path leads to. */
function allowedKeys(schema: z.ZodType, path: readonly PropertyKey[]): readonly string[] {
  let at: z.ZodType = schema
  for (const step of path) {
    if (at instanceof z.ZodArray) at = at.element as z.ZodType
    else if (at instanceof z.ZodObject) at = (at.shape as Record<PropertyKey, z.ZodType>)[step]!
  }
  return at instanceof z.ZodObject ? Object.keys(at.shape) : []
}

function sayTwice(rules: readonly BookRule[], problems: string[]): void {
  rules.forEach((rule, i) => {
    const first = rules.findIndex((other) => other.id === rule.id)
    if (first < i)
      problems.push(
        `${rule.file}: rule "${rule.id}": the id is already used in ${rules[first]!.file}; ids are unique`,
      )
  })
}
