import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'

/** Who may get at what is kept: everybody on this machine, or whom a proxy in front names in a header. */
export type Door =
  | { readonly kind: 'this-machine' }
  | { readonly kind: 'proxy'; readonly header: string }
  | { readonly kind: 'closed' }

export interface Person {
  /** Name as revisions carry it; empty on one's own machine. */
  readonly name: string
  readonly workspace: string
}

const WORKSPACE = 'main'
const HERE = /^(?:localhost|127(?:\.\d{1,3}){3}|\[::1\])(?::\d+)?$/i

/**
 * The person behind a request. On one's own machine nobody signs in; but only what was asked of this machine by its own
 * name counts, so that no page elsewhere reaches it by a name of its own. Throws 403 where nobody may be let in.
 */
export function personOf(c: Context, door: Door): Person {
  switch (door.kind) {
    case 'this-machine':
      if (!HERE.test(c.req.header('host') ?? new URL(c.req.url).host))
        throw new HTTPException(403, {
          message: 'What is kept here is reached by the name of this machine only.',
        })
      return { name: '', workspace: WORKSPACE }
    case 'proxy': {
      const name = c.req.header(door.header)?.trim() ?? ''
      if (name === '' || name.length > 200)
        throw new HTTPException(403, {
          message: 'The proxy in front of this program does not say who you are.',
        })
      return { name, workspace: WORKSPACE }
    }
    case 'closed':
      throw new HTTPException(403, {
        message:
          'This program is reached from other machines and was not told who may be trusted, so nothing is kept here. Start it with --user-header NAME behind a proxy that signs people in.',
      })
  }
}

const LOOPBACK = /^(?:localhost|127(?:\.\d{1,3}){3}|::1)$/

/** How people are let in, by where the program listens. */
export const doorOf = (listen: string, header: string | null): Door =>
  header !== null ? { kind: 'proxy', header } : { kind: LOOPBACK.test(listen) ? 'this-machine' : 'closed' }
