import { fieldWords } from '../../views/words/path.ts'
import type { BriefInput, Versions } from '../contract/index.ts'
import { otherVersions } from './report-data.ts'

interface Issue {
  readonly brief: BriefInput
  readonly versions: Versions
}

/** Every value of a brief by its dotted path. */
function flat(value: unknown, path = ''): [string, string][] {
  if (typeof value !== 'object' || value === null) return [[path, String(value)]]
  return Object.entries(value).flatMap(([key, inner]) => flat(inner, path === '' ? key : `${path}.${key}`))
}

/** What differs between two issues: values of the brief that came, went or changed, then versions. */
export function changesSince(earlier: Issue, now: Issue): string[] {
  const before = new Map(flat(earlier.brief))
  const after = new Map(flat(now.brief))
  const paths = [...new Set([...before.keys(), ...after.keys()])].sort()
  const values = paths.flatMap((path) => {
    const [from, to] = [before.get(path), after.get(path)]
    if (from === to) return []
    return [`${wordsOf(path)}: ${from ?? 'not given'} before, ${to ?? 'not given'} now`]
  })
  return [...values, ...otherVersions(earlier.versions, now.versions)]
}

/** "height of the food (points 2)" for points.1.heightMm. */
function wordsOf(path: string): string {
  const rows = [...path.matchAll(/([A-Za-z]+)\.(\d+)/g)].map(([, list, row]) => `${list} ${Number(row) + 1}`)
  return `${fieldWords(path)}${rows.length > 0 ? ` (${rows.join(', ')})` : ''}`
}
