import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { MessagePage, MessagePart } from '../../views/message-page.tsx'
import type { Problem } from '../contract/index.ts'
import { Refusal } from './asked/refusal.ts'
import { Busy } from './serving/busy.ts'
import { showPage } from './show-page.ts'
import { logFault } from './watched/log.ts'

const TITLES: Readonly<Record<number, string>> = {
  400: 'This cannot be read',
  401: 'Sign in first',
  403: 'Not from here, or not for you',
  404: 'Nothing stands at this address',
  405: 'This address is not asked that way',
  413: 'This is too much at once',
  415: 'This kind of content is not taken',
  422: 'There is a problem',
  500: 'Something went wrong here',
  503: 'Not now',
}

/** Statuses told before what was sent is read. */
const UNREAD: readonly number[] = [403, 413]

/** A failure in the form the asker can use: JSON for programs, a part for htmx, a page for people. */
function failed(
  c: Context,
  status: ContentfulStatusCode,
  text: string,
  problems: readonly Problem[] = [{ path: '', message: text }],
) {
  if (c.req.path.startsWith('/api/')) return c.json({ problems }, status)
  const title = TITLES[status] ?? 'This did not work'
  const asPart = c.req.header('HX-Request') === 'true'
  return showPage(
    c,
    asPart ? <MessagePart title={title} text={text} /> : <MessagePage title={title} text={text} />,
    status,
  )
}

export const notFound = (c: Context) => failed(c, 404, 'The address may have been mistyped or cut short.')

/** The page is there, but not for this method. */
export function wrongMethod(c: Context, allowed: string[]) {
  c.header('allow', allowed.join(', '))
  return failed(c, 405, `This address takes ${allowed.join(', ')}; it was asked with ${c.req.method}.`)
}

export function onError(error: Error, c: Context) {
  if (error instanceof Busy) c.header('retry-after', String(error.retryAfterS))
  // A body turned away unread makes the line useless for another request: it is closed, and says so.
  if (error instanceof HTTPException && UNREAD.includes(error.status)) c.header('connection', 'close')
  if (error instanceof Refusal) return failed(c, 422, error.message, error.problems)
  if (error instanceof HTTPException) return failed(c, error.status as ContentfulStatusCode, error.message)
  // A sender that has gone in the middle of its request is no fault here, and hears no answer.
  if ((error as NodeJS.ErrnoException).code === 'ECONNRESET')
    return failed(c, 400, 'The request did not arrive whole.')
  logFault(error, c.req.header('x-request-id'))
  return failed(
    c,
    500,
    'The fault is in this program, not in what was asked. The brief in the address is not lost.',
  )
}
