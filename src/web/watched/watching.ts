import { randomUUID } from 'node:crypto'
import type { Server } from 'node:http'
import { HTTPException } from 'hono/http-exception'
import type { Keeping } from '../kept-store/keeping.ts'
import type { WayIn } from '../people/way-in.ts'
import { log } from './log.ts'
import { type LaneFigures, Metrics, mayNotWatch } from './metrics.ts'
import { routeOf } from './route.ts'

/** The header that names a request in its answer and in the log. */
export const REQUEST_ID = 'x-request-id'

export interface Watching {
  readonly server: Server
  readonly lanes: () => readonly LaneFigures[]
  readonly keeping: Keeping
  readonly wayIn: WayIn
  /** What a watcher brings along (GRITWISE_METRICS_TOKEN); null where none is set. */
  readonly token: string | null
}

/**
 * Counts and logs every request of a server: its number, method, pattern of address, status and time. Neither the
 * address itself, which carries a brief, nor anything sent is written anywhere. Answers /metrics.
 */
export function watch({
  server,
  lanes,
  keeping,
  wayIn,
  token,
}: Watching): (request: Request) => Promise<Response> {
  const metrics = new Metrics(lanes, keeping)
  server.prependListener('request', (request, answer) => {
    const begun = performance.now()
    const id = randomUUID()
    answer.setHeader(REQUEST_ID, id)
    // Workers name the same request when they have a fault; what the asker calls it is not taken over.
    const { rawHeaders } = request
    for (let at = rawHeaders.length - 2; at >= 0; at -= 2)
      if (rawHeaders[at]!.toLowerCase() === REQUEST_ID) rawHeaders.splice(at, 2)
    rawHeaders.push(REQUEST_ID, id)
    answer.once('close', () => {
      const ms = performance.now() - begun
      const over = { method: request.method ?? '', route: routeOf(request), status: answer.statusCode, ms }
      metrics.note(over)
      const line = { request: id, ...over, ms: Math.round(ms * 10) / 10, whole: answer.writableFinished }
      log.info(line, 'request')
    })
  })
  return async (request) => {
    const status = mayNotWatch(request, wayIn, token)
    if (status === null) return metrics.answer()
    throw new HTTPException(status, {
      message:
        token === null
          ? 'Beyond this machine the figures are for who brings a token: start the program with GRITWISE_METRICS_TOKEN.'
          : 'Bring the token along: authorization: Bearer TOKEN.',
    })
  }
}
