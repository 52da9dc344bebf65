import type { MiddlewareHandler } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { HTTPException } from 'hono/http-exception'
import { secureHeaders } from 'hono/secure-headers'

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

const MOST_BYTES = 512 * 1024
/** A table of 100,000 runs. */
const MOST_BYTES_OF_RUNS = 24 * 1024 * 1024

const atMost = (bytes: number) =>
  bodyLimit({
    maxSize: bytes,
    onError: () => {
      throw new HTTPException(413, { message: `at most ${bytes / 1024} kB can be sent` })
    },
  })
const usual = atMost(MOST_BYTES)
const runs = atMost(MOST_BYTES_OF_RUNS)

export const bodySize: MiddlewareHandler = (c, next) =>
  (['/runs', '/api/runs'].includes(c.req.path) ? runs : usual)(c, next)
