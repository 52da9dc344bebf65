import type { Context, MiddlewareHandler } from 'hono'
import { routePath } from 'hono/route'

/** Names, on the way to the door, the address pattern that answered: "/kept/:id", which no brief is part of. */
const MARK = 'gritwise-route'

/** The first of an app's handlers, so that it sees who answered. */
export const markRoute: MiddlewareHandler = async (c, next) => {
  await next()
  const path = routePath(c)
  if (!path.includes('*')) c.res.headers.set(MARK, path)
}

/** An answer given outside of any app. */
export function markedAs(route: string, answer: Response): Response {
  answer.headers.set(MARK, route)
  return answer
}

const routes = new WeakMap<object, string>()

/** Takes the mark off at the door, and notes it for who watches. */
export const unmarkRoute: MiddlewareHandler = async (c: Context, next) => {
  await next()
  const route = c.res.headers.get(MARK)
  if (route === null) return
  c.res.headers.delete(MARK)
  const { incoming } = (c.env ?? {}) as { incoming?: object }
  if (incoming) routes.set(incoming, route)
}

/** The pattern that answered a request; "none" where it was turned away before, or has no page. */
export const routeOf = (incoming: object): string => routes.get(incoming) ?? 'none'

/** For what is answered ahead of the door. */
export const noteRoute = (incoming: object, route: string) => routes.set(incoming, route)
