import { readFileSync } from 'node:fs'

/** Text of a file of the raw folder. */
export function rawText(name: string): string {
  return readFileSync(new URL(`../raw/${name}`, import.meta.url), 'utf8')
}

/** A raw JSON file; the shape is the caller's claim, checked by the tests of the built tables. */
export function rawJson<T>(name: string): T {
  return JSON.parse(rawText(name)) as T
}

/** Lines of a raw CSV file below its header, split at the commas (no quoting is used). */
export function rawRows(name: string): readonly (readonly string[])[] {
  return rawText(name)
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','))
}
