import { createHmac, timingSafeEqual } from 'node:crypto'
import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { type Person, ROLES, type Role } from '../../store/people/people.ts'

/** Who asks. */
export interface Visitor extends Person {
  /** Stands in every form of a page that changes something; another site cannot know it. */
  readonly token: string
  /** What the browser holds since it signed in; null where nobody signs in here. */
  readonly key: string | null
}

/** The token of a person's forms, for one sitting. */
export const tokenOf = (tokenKey: string, name: string, key: string | null): string =>
  createHmac('sha256', tokenKey)
    .update(JSON.stringify([name, key]))
    .digest('base64url')

/** Whether a role is enough for what asks for another. */
export const may = (role: Role, needs: Role): boolean => ROLES.indexOf(role) >= ROLES.indexOf(needs)

/** The visitor whom the gate let in. */
export function visitorOf(c: Context): Visitor {
  const visitor = (c.env as { visitor?: Visitor } | undefined)?.visitor
  if (!visitor) throw new HTTPException(403, { message: 'Nobody was let in here.' })
  return visitor
}

/** The machine the visitor asks from; null where nobody can tell. */
export const senderIn = (c: Context): string | null =>
  (c.env as { sender?: string | null } | undefined)?.sender ?? null

/** Stops who has not the role. */
export function require(visitor: Visitor, needs: Role): void {
  if (!may(visitor.role, needs))
    throw new HTTPException(403, {
      message: `This takes the role of ${needs}; ${visitor.name} is ${visitor.role}. An administrator can change that.`,
    })
}

/** Stops a form that does not come from a page of this visitor. */
export function requireToken(visitor: Visitor, token: unknown): void {
  const given = Buffer.from(typeof token === 'string' ? token : '')
  const wanted = Buffer.from(visitor.token)
  if (given.length !== wanted.length || !timingSafeEqual(given, wanted))
    throw new HTTPException(403, {
      message:
        'This form was drawn for somebody else, or before signing in anew. Open the page again and send it from there.',
    })
}
