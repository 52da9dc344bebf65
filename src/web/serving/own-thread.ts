import { Hono } from 'hono'
import { methodNotAllowed } from 'hono/method-not-allowed'
import { notFound, onError, wrongMethod } from '../failures.tsx'
import type { Keeping } from '../kept-store/keeping.ts'
import { keptRoutes } from '../kept-store/kept-routes.ts'
import type { TableWork } from '../lines/table-work.ts'
import { gate } from '../people/gate.ts'
import type { WayIn } from '../people/way-in.ts'
import { tableRoutes } from '../table-routes.ts'
import { markedAs, markRoute } from '../watched/route.ts'
import type { Answers } from './door.ts'
import { dressed } from './dressed.ts'
import { health } from './health.ts'

const HERE = /^(?:\/b\/[\w-]+)?\/(?:(?:api\/)?lines|kept|people|trail|sign-in|sign-out)(?:\/|$)/

export interface OwnThread {
  readonly tables: TableWork
  readonly keeping: Keeping
  readonly wayIn: WayIn
  /** Answers /metrics; nothing does where nobody watches. */
  readonly metrics?: (request: Request) => Promise<Response>
}

/**
 * What the server's own thread answers, because it only hands on: tables of products, which outlast every request and
 * whose rows go to all workers, and what is kept, which the database thinks about. All else goes to the others.
 */
export function ownThread(
  { tables, keeping, wayIn, metrics }: OwnThread,
  others: Answers,
): { answers: Answers; close: () => Promise<void> } {
  const app = new Hono()
  app.use(markRoute)
  app.use(methodNotAllowed({ app, onMethodNotAllowed: wrongMethod }))
  app.onError(onError)
  app.notFound(notFound)
  const jobs = tableRoutes(app, tables)
  keptRoutes(app, keeping, wayIn, others)
  const letIn = gate(wayIn, keeping, (request, env) =>
    HERE.test(new URL(request.url).pathname)
      ? dressed((inner) => app.fetch(inner, env))(request)
      : others(request),
  )
  return {
    answers: async (request) => {
      const { pathname } = new URL(request.url)
      if (pathname === '/healthz') return markedAs(pathname, await health(keeping))
      if (pathname === '/metrics' && metrics) return markedAs(pathname, await metrics(request))
      return letIn(request)
    },
    close: async () => {
      await jobs.close()
      await keeping.close()
    },
  }
}
