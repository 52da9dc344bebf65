import { z } from 'zod'
import { at, wordsOf } from '../../brief/problems.ts'
import { quoted } from '../../contract/quoted.ts'
import { MOST_PROBLEMS } from '../../intake/bounds.ts'
import { readJsonText } from '../../intake/json-text.ts'
import { type BookText, bookFolder } from './book-folder.ts'
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

/** Unknown keys told of one place in a book. */
const MOST_KEYS = 10

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

/** Reads a book from a folder or from memory; what is wrong is added to `problems`, file by file. */
export function readBook(from: string | BookText, problems: string[]): BookFiles {
  const { name, files: texts } = typeof from === 'string' ? bookFolder(from, problems) : from
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

function readText<T>(text: string, file: string, schema: z.ZodType<T>, problems: string[]): T | null {
  const read = readJsonText(text)
  if (!read.ok) {
    problems.push(`${file}: ${read.because}`)
    return null
  }
  const parsed = schema.safeParse(read.value)
  if (parsed.success) return parsed.data
  for (const issue of parsed.error.issues.slice(0, MOST_PROBLEMS + 1))
    problems.push(`${file}: ${where(read.value, issue.path)}${said(issue, read.value, schema)}`)
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
  return `${quoted(id)}: ${rest ? `${rest}: ` : ''}`
}

function said(issue: z.core.$ZodIssue, content: unknown, schema: z.ZodType): string {
  if (issue.code !== 'unrecognized_keys')
    return wordsOf(issue, String(issue.path.at(-1) ?? 'the file'), at(content, issue.path))
  const keys = issue.keys.slice(0, MOST_KEYS).map(quoted).join(', ')
  return `Unrecognized key${issue.keys.length === 1 ? '' : 's'}: ${keys}${issue.keys.length > MOST_KEYS ? ' and more' : ''}; allowed: ${allowedKeys(schema, issue.path).join(', ')}`
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
