import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { z } from 'zod'
import {
  type Book,
  type BookRule,
  bookSchema,
  type RuleSource,
  ruleFileSchema,
  ruleSourceSchema,
  type Threshold,
  thresholdSchema,
} from './rule-schema.ts'

/** Files of a book that hold no rules. */
const BOOK_FILES = ['book.json', 'thresholds.json', 'sources.json', 'base-brief.json']

/** What the files of one book hold. */
export interface BookFiles {
  readonly book: Book
  readonly rules: readonly BookRule[]
  readonly thresholds: readonly (Threshold & { readonly book: string })[]
  readonly sources: readonly RuleSource[]
  readonly baseBrief: Record<string, unknown> | null
}

/** A book held in memory: its name, and the text of each of its files. */
export interface BookText {
  readonly name: string
  readonly files: Readonly<Record<string, string>>
}

/** Reads a book from a folder or from memory; what is wrong is added to `problems`, file by file. */
export function readBook(from: string | BookText, problems: string[]): BookFiles {
  const { name, files: texts } = typeof from === 'string' ? folder(from, problems) : from
  const files = Object.keys(texts).sort()
  const read = <T>(file: string, schema: z.ZodType<T>): T | null =>
    texts[file] === undefined ? null : readText(texts[file], file, schema, problems)
  const book = read('book.json', bookSchema) ?? { name, version: 'without version', changelog: [] }
  const rules = files
    .filter((file) => file.endsWith('.json') && !BOOK_FILES.includes(file))
    .flatMap((file) => {
      const { subject = '', rules: list = [] } = read(file, ruleFileSchema) ?? {}
      return list.map((rule) => ({ ...rule, book: book.name, file, subject }))
    })
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

function folder(directory: string, problems: string[]): BookText {
  const name = basename(directory)
  try {
    const files = readdirSync(directory).filter((file) => file.endsWith('.json'))
    const text = (file: string) => readFileSync(join(directory, file), 'utf8')
    return { name, files: Object.fromEntries(files.map((file) => [file, text(file)])) }
  } catch {
    problems.push(
      `${directory}: no such folder; a rule book is a folder of JSON files (rules, thresholds.json, sources.json)`,
    )
    return { name, files: {} }
  }
}

function readText<T>(text: string, file: string, schema: z.ZodType<T>, problems: string[]): T | null {
  let content: unknown
  try {
    content = JSON.parse(text)
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
