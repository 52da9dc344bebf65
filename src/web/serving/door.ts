import { Hono } from 'hono'
import { compress } from 'hono/compress'
import { methodNotAllowed } from 'hono/method-not-allowed'
import { assetFile } from '../assets.ts'
import { notFound, onError, wrongMethod } from '../failures.tsx'
import { bodySize, fromHere, notStored, safeHeaders } from './guards.ts'

/** Whoever answers what the door lets in: the pages in this thread, or the pool. */
export type Answers = (request: Request) => Response | Promise<Response>

/** What every request passes: headers, limits, who may ask; files that never change are handed out here. */
export function door(answers: Answers): Hono {
  const app = new Hono()
  app.use(safeHeaders)
  app.use(compress())
  app.use(notStored)
  app.use(methodNotAllowed({ app, onMethodNotAllowed: wrongMethod }))
  app.use(fromHere)
  app.use(bodySize)
  app.onError(onError)
  app.notFound(notFound)
  app.get('/assets/:name', assetFile)
  app.all('*', (c) => answers(c.req.raw))
  return app
}
