import type { Context } from 'hono'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { takeChanges } from './text-first.ts'

const bytes = new TextEncoder()

/**
 * A page, or a part of one, as the answer. It is handed over as bytes: as a string of several hundred kB it would be
 * looked through once more for broken characters, which takes longer than drawing it.
 */
export function showPage(
  c: Context,
  page: { toString(): string | Promise<string> },
  status: ContentfulStatusCode = 200,
) {
  const text = takeChanges(c.req.raw)(String(page), status)
  return c.body(bytes.encode(text), status, {
    'content-type': 'text/html; charset=UTF-8',
  })
}
