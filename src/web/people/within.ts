import type { Context } from 'hono'
import type { Role } from '../../store/people/people.ts'
import type { Store } from '../../store/store.ts'
import { postedForm } from '../asked/form-answers.ts'
import { type Keeping, unavailable } from '../kept-store/keeping.ts'
import { require, requireToken, type Visitor, visitorOf } from './visitor.ts'

export type Handler = (c: Context, store: Store, visitor: Visitor) => Promise<Response>

/** Pages of the store for who has the role; say in words where the database fails. */
export function within(keeping: Keeping) {
  const page =
    (withToken: boolean) =>
    (needs: Role, handler: Handler) =>
    async (c: Context): Promise<Response> => {
      const visitor = visitorOf(c)
      require(visitor, needs)
      if (withToken && c.req.method === 'POST') requireToken(visitor, (await postedForm(c)).token)
      try {
        return await handler(c, await keeping.store(), visitor)
      } catch (error) {
        throw unavailable(error)
      }
    }
  return {
    /** What is posted changes something: its form brings its token along. */
    letIn: page(true),
    /** What is posted is only looked at: a page that knows no token may send it. */
    letLook: page(false),
  }
}
