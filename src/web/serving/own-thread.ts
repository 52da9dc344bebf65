import { Hono } from 'hono'
import { methodNotAllowed } from 'hono/method-not-allowed'
import type { Workforce } from '../../lines/read-lines.ts'
import { notFound, onError, wrongMethod } from '../failures.tsx'
import { tableRoutes } from '../table-routes.ts'
import type { Answers } from './door.ts'

const HERE = /^\/(?:api\/)?lines(?:\/|$)/

/**
 * What the server's own thread answers, because it only hands on: tables of products, which outlast every request and
 * whose rows go to all workers. All else goes to the others.
 */
export function ownThread(
  workforce: Workforce,
  others: Answers,
): { answers: Answers; close: () => Promise<void> } {
  const app = new Hono()
  app.use(methodNotAllowed({ app, onMethodNotAllowed: wrongMethod }))
  app.onError(onError)
  app.notFound(notFound)
  const jobs = tableRoutes(app, workforce)
  return {
    answers: (request) => (HERE.test(new URL(request.url).pathname) ? app.fetch(request) : others(request)),
    close: () => jobs.close(),
  }
}
