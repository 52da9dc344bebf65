import { z } from 'zod'
import { at, wordsOf } from '../../brief/problems.ts'
import { readJsonText } from '../../intake/json-text.ts'
import type { BookText } from './rulebook.ts'

/** Rules a person may lay over the book in one go; more belong in a folder of their own. */
const MOST_RULES = 40

const pastedSchema = z.strictObject({
  name: z.string().trim().min(1).max(60).default('pasted'),
  version: z.string().trim().min(1).max(30).default('without version'),
  rules: z
    .array(z.unknown())
    .max(MOST_RULES, { error: `at most ${MOST_RULES} rules` })
    .default([]),
  thresholds: z.array(z.unknown()).max(MOST_RULES).default([]),
  sources: z.array(z.unknown()).max(MOST_RULES).default([]),
})

export type Pasted = { ok: true; book: BookText } | { ok: false; problem: string }

/**
 * One JSON document { name, version, rules, thresholds, sources } as a book to lay over the house's own; each
 * list may be left out. What is inside the lists is checked when the book is loaded.
 */
export function pastedBook(text: string): Pasted {
  const json = readJsonText(text)
  if (!json.ok) return { ok: false, problem: json.because }
  const read = pastedSchema.safeParse(json.value)
  if (!read.success) {
    const said = read.error.issues.map((issue) =>
      [
        issue.path.join('.'),
        wordsOf(issue, String(issue.path.at(-1) ?? 'the book'), at(json.value, issue.path)),
      ]
        .filter(Boolean)
        .join(': '),
    )
    return { ok: false, problem: said.join('; ') }
  }
  const { name, version, rules, thresholds, sources } = read.data
  const files = {
    'book.json': {
      name,
      version,
      changelog: [{ version, changes: ['Laid over the book for a comparison.'] }],
    },
    'thresholds.json': thresholds,
    'sources.json': sources,
    ...(rules.length > 0 ? { 'pasted.json': { subject: 'Rules laid over the book', rules } } : {}),
  }
  const texts = Object.entries(files).map(([file, json]) => [file, JSON.stringify(json)] as const)
  return { ok: true, book: { name, files: Object.fromEntries(texts) } }
}
