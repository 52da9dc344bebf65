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

export const bodySize: MiddlewareHandler = bodyLimit({
  maxSize: MOST_BYTES,
  onError: () => {
    throw new HTTPException(413, { message: `at most ${MOST_BYTES / 1024} kB can be sent` })
  },
})
