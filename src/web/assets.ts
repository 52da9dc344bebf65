import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Context } from 'hono'

const own = (name: string) => readFileSync(new URL(`./assets/${name}`, import.meta.url))
const script = readFileSync(createRequire(import.meta.url).resolve('htmx.org/dist/htmx.min.js'))

const asset = (type: string, body: Buffer) => ({
  type,
  body: body.toString('utf8'),
  etag: `"${createHash('sha256').update(body).digest('base64url').slice(0, 16)}"`,
})

/** Everything a page loads beside itself; nothing comes from elsewhere. */
const ASSETS = new Map([
  ['gritwise.css', asset('text/css; charset=utf-8', own('gritwise.css'))],
  ['advice.css', asset('text/css; charset=utf-8', own('advice.css'))],
  ['brief.css', asset('text/css; charset=utf-8', own('brief.css'))],
  ['sittings.css', asset('text/css; charset=utf-8', own('sittings.css'))],
  ['room.css', asset('text/css; charset=utf-8', own('room.css'))],
  ['compare.css', asset('text/css; charset=utf-8', own('compare.css'))],
  ['pictures.css', asset('text/css; charset=utf-8', own('pictures.css'))],
  ['runs.css', asset('text/css; charset=utf-8', own('runs.css'))],
  ['enter-runs.js', asset('text/javascript; charset=utf-8', own('enter-runs.js'))],
  ['dial-ahead.js', asset('text/javascript; charset=utf-8', own('dial-ahead.js'))],
  ['room-keys.js', asset('text/javascript; charset=utf-8', own('room-keys.js'))],
  ['kept.css', asset('text/css; charset=utf-8', own('kept.css'))],
  ['records.css', asset('text/css; charset=utf-8', own('records.css'))],
  ['icon.svg', asset('image/svg+xml', own('icon.svg'))],
  ['htmx.js', asset('text/javascript; charset=utf-8', script)],
])

export const ASSET_NAMES = [...ASSETS.keys()]

export const assetFile = (c: Context) => {
  const found = ASSETS.get(c.req.param('name') ?? '')
  if (!found) return c.notFound()
  c.header('etag', found.etag)
  c.header('cache-control', 'no-cache')
  const known = (c.req.header('if-none-match') ?? '').includes(found.etag.slice(1, -1))
  if (known) return c.body(null, 304)
  c.header('content-type', found.type)
  return c.body(found.body)
}
