import type { Context } from 'hono'
import type { Role } from '../../store/people/people.ts'
import type { Store } from '../../store/store.ts'
import { postedForm } from '../asked/form-answers.ts'
import { type Keeping, unavailable } from '../kept-store/keeping.ts'
import { require, requireToken, type Visitor, visitorOf } from './visitor.ts'

export type Handler = (c: Context, store: Store, visitor: Visitor) => Promise<Response>

/** A page of the store for who has the role, its forms with their token; says in words where the database fails. */
export const within =
  (keeping: Keeping) =>
  (needs: Role, handler: Handler) =>
  async (c: Context): Promise<Response> => {
    const visitor = visitorOf(c)
    require(visitor, needs)
    if (c.req.method === 'POST') requireToken(visitor, (await postedForm(c)).token)
    try {
      return await handler(c, await keeping.store(), visitor)
    } catch (error) {
      throw unavailable(error)
    }
  }
