import { Hono, type MiddlewareHandler } from 'hono'
import { compress } from 'hono/compress'
import { methodNotAllowed } from 'hono/method-not-allowed'
import { assetFile } from '../assets.ts'
import { notFound, onError, wrongMethod } from '../failures.tsx'
import { unmarkRoute } from '../watched/route.ts'
import { bodySize, fromHere, notStored, safeHeaders } from './guards.ts'
import { noteSender } from './sender.ts'

/** Whoever answers what the door lets in: the pages in this thread, or the pool. */
export type Answers = (request: Request) => Response | Promise<Response>

const passed: MiddlewareHandler = (_, next) => next()

/** What every request passes: headers, limits, who may ask; files that never change are handed out here. */
export function door(
  answers: Answers,
  ownName: MiddlewareHandler = passed,
  names: readonly string[] = [],
): Hono {
  const app = new Hono()
  app.use(unmarkRoute)
  app.use(safeHeaders)
  app.use(notStored)
  app.use(methodNotAllowed({ app, onMethodNotAllowed: wrongMethod }))
  app.use(ownName)
  app.use(fromHere(names))
  app.use(bodySize)
  app.onError(onError)
  app.notFound(notFound)
  app.use('/assets/*', compress())
  app.get('/assets/:name', assetFile)
  // Last, because the count of bytes sent puts another request in the place of the first.
  app.all('*', noteSender, (c) => answers(c.req.raw))
  return app
}
