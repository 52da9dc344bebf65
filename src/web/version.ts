import { readFileSync } from 'node:fs'

/** The program's version as its package says it. */
export const version = (
  JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { version: string }
).version
