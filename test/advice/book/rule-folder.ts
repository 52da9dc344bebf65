import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'

export const RULE = {
  id: 'tall-food',
  title: 'The food is tall',
  appliesTo: ['point'],
  conditions: {
    all: [{ fact: 'point.heightMm', operator: 'greaterThan', value: { fact: 'threshold.high' } }],
  },
  event: { type: 'warns', params: { text: 'The food is {point.heightMm} high.' } },
  because: 'A tall food takes more of the beam.',
  exception: 'A light food does not.',
  sources: ['a-source'],
  evidence: 'judgement',
  examples: [
    { brief: { points: [{ heightMm: 90 }] }, fires: true },
    { brief: { points: [{ heightMm: 9 }] }, fires: false },
  ],
}

export const THRESHOLD = {
  id: 'high',
  value: 50,
  unit: 'mm',
  label: 'high food',
  source: 'a-source',
  evidence: 'judgement',
}
export const SOURCE = { id: 'a-source', text: 'A source written for this test.', mark: 'A' }
export const BOOK = {
  name: 'trial book',
  version: '7',
  changelog: [{ version: '7', changes: ['First trial of this book.'] }],
}

interface Files {
  rules?: unknown[]
  thresholds?: unknown[]
  sources?: unknown[]
  book?: unknown
  raw?: Record<string, string>
}

/** A rule book on disk: one sound rule, unless told otherwise. */
export function ruleFolder(files: Files = {}, name = 'book'): string {
  const parent = mkdtempSync(join(tmpdir(), 'rules-'))
  const folder = join(parent, name)
  mkdirSync(folder)
  const write = (file: string, content: unknown) =>
    writeFileSync(join(folder, file), typeof content === 'string' ? content : JSON.stringify(content))
  write('trial.json', { subject: 'Rules made up for a test', rules: files.rules ?? [RULE] })
  write('thresholds.json', files.thresholds ?? [THRESHOLD])
  write('sources.json', files.sources ?? [SOURCE])
  write('book.json', files.book ?? BOOK)
  for (const [file, content] of Object.entries(files.raw ?? {})) {
    mkdirSync(dirname(join(folder, file)), { recursive: true })
    write(file, content)
  }
  return folder
}
