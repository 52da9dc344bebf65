import type { Context, MiddlewareHandler } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { HTTPException } from 'hono/http-exception'
import { secureHeaders } from 'hono/secure-headers'
import { MOST_BYTES, MOST_BYTES_OF_RUNS } from '../../intake/bounds.ts'

/** Nothing but our own files, no inline script or style, no frame; HSTS is the business of a proxy. */
export const safeHeaders: MiddlewareHandler = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
    objectSrc: ["'none'"],
  },
  strictTransportSecurity: false,
  xFrameOptions: 'DENY',
  referrerPolicy: 'no-referrer',
})

const atMost = (bytes: number) =>
  bodyLimit({
    maxSize: bytes,
    onError: () => {
      throw new HTTPException(413, { message: `at most ${bytes / 1024} kB can be sent` })
    },
  })
const usual = atMost(MOST_BYTES)
const table = atMost(MOST_BYTES_OF_RUNS)
const TAKES_TABLES = /^\/(?:(?:api\/)?(?:runs|lines)|runs\/(?:table\.csv|sheet)|kept(?:\/[\w-]+)?)$/

export const bodySize: MiddlewareHandler = (c, next) =>
  (TAKES_TABLES.test(c.req.path) ? table : usual)(c, next)

/** Addresses under which briefs, tables of products, what is kept and people stand. */
const CARRIES = /^\/(?:b\/|lines\/|(?:kept|people|trail|sign-in)(?:\/|$))/

/** A brief is a company's own: what carries one, asked or answered, stays in no cache on the way. */
export const notStored: MiddlewareHandler = async (c, next) => {
  await next()
  if (c.req.method === 'POST' || c.req.query('b') !== undefined || CARRIES.test(c.req.path))
    c.res.headers.set('cache-control', 'no-store')
}

/**
 * Another site may link here, but not send forms here or load its pictures from here: every page a person has open
 * could otherwise set this machine to work. Browsers say where a request comes from; programs need not.
 */
export const fromHere =
  (names: readonly string[]): MiddlewareHandler =>
  async (c, next) => {
    const from = c.req.header('sec-fetch-site') ?? fromOrigin(c, names)
    const follows = c.req.method === 'GET' && c.req.header('sec-fetch-dest') === 'document'
    if (from !== 'same-origin' && from !== 'none' && !follows)
      throw new HTTPException(403, {
        message:
          'Only pages of this program may send to it or load from it. Behind a proxy, start it with --name and the name people ask by.',
      })
    await next()
  }

/** For browsers that do not say more: a form names where its page came from, which must be here; programs name nothing. */
function fromOrigin(c: Context, names: readonly string[]): 'none' | 'cross-site' {
  const origin = c.req.header('origin')
  if (origin === undefined || c.req.method === 'GET') return 'none'
  const from = URL.canParse(origin) ? new URL(origin) : null
  return from && (from.host === c.req.header('host') || names.includes(from.hostname)) ? 'none' : 'cross-site'
}
