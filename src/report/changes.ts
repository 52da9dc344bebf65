import { fieldWords } from '../../views/words/path.ts'
import { differingFields } from '../brief/differing-fields.ts'
import type { Versions } from '../contract/index.ts'
import { otherVersions, type ReportData } from './report-data.ts'

interface Issue {
  readonly brief: ReportData['brief']
  readonly versions: Versions
}

/** What differs between two issues: values of the brief that came, went or changed, then versions. */
export function changesSince(earlier: Issue, now: Issue): string[] {
  const values = differingFields(earlier.brief, now.brief).map(
    ({ path, first, second }) =>
      `${wordsOf(path)}: ${first ?? 'not given'} before, ${second ?? 'not given'} now`,
  )
  return [...values, ...otherVersions(earlier.versions, now.versions)]
}

/** "height of the food (points 2)" for points.1.heightMm. */
function wordsOf(path: string): string {
  const rows = [...path.matchAll(/([A-Za-z]+)\.(\d+)/g)].map(([, list, row]) => `${list} ${Number(row) + 1}`)
  return `${fieldWords(path)}${rows.length > 0 ? ` (${rows.join(', ')})` : ''}`
}
