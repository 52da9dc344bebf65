import { MOST_BYTES, MOST_DEPTH, MOST_VALUES } from './bounds.ts'

/** `unreadable`: no JSON at all; `too-much`: JSON, but more or deeper than any document here has reason to be. */
export type ReadJson =
  | { ok: true; value: unknown }
  | { ok: false; kind: 'unreadable' | 'too-much'; because: string }

const tooMuch = (because: string): ReadJson => ({ ok: false, kind: 'too-much', because })

/**
 * The one reader of JSON for every door (page, address, API, file, command, rules), so that the same text gets the
 * same answer everywhere. A byte order mark is no part of the document.
 */
export function readJsonText(text: string, mostBytes = MOST_BYTES, mostValues = MOST_VALUES): ReadJson {
  const bytes = Buffer.byteLength(text)
  if (bytes > mostBytes)
    return tooMuch(`it has ${Math.ceil(bytes / 1024)} kB; at most ${mostBytes / 1024} kB are read`)
  let value: unknown
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    return { ok: false, kind: 'unreadable', because: `not readable as JSON: ${(error as Error).message}` }
  }
  const because = outOfBounds(value, mostValues)
  return because === null ? { ok: true, value } : tooMuch(because)
}

/** Goes through a document level by level, not by calling itself: depth is one of the things it has to bear. */
function outOfBounds(document: unknown, mostValues: number): string | null {
  let level: unknown[] = [document]
  let values = 1
  for (let depth = 0; level.length > 0; depth++) {
    if (depth > MOST_DEPTH) return `it is nested more than ${MOST_DEPTH} deep`
    const next: unknown[] = []
    for (const value of level) {
      if (typeof value === 'number' && !Number.isFinite(value))
        return 'it holds a number with more digits than any quantity has'
      if (typeof value !== 'object' || value === null) continue
      const inside = Object.values(value)
      values += inside.length
      if (values > mostValues) return `it holds more than ${mostValues.toLocaleString('en')} values`
      for (const one of inside) next.push(one)
    }
    level = next
  }
  return null
}
