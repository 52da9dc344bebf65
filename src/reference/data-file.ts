import { readFileSync } from 'node:fs'

/** A built data file; its shape is proved by the tests of this room. */
export function dataFile<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(`./data/${name}`, import.meta.url), 'utf8')) as T
}
