import { readFileSync } from 'node:fs'
import type { Versions } from '../../contract/index.ts'
import { referenceVersion } from '../../reference/index.ts'
import type { Rulebook } from './rule-schema.ts'

const { version } = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8')) as {
  version: string
}

/** What a run under a book rests on. */
export const versionsUnder = (book: Rulebook): Versions => ({
  gritwise: version,
  rules: book.version,
  reference: referenceVersion,
})
