import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { ContentfulStatusCode } from 'hono/utils/http-status'
import { MessagePage, MessagePart } from '../../views/message-page.tsx'
import { showPage } from './show-page.ts'

const TITLES: Readonly<Record<number, string>> = {
  400: 'This cannot be read',
  404: 'Nothing stands at this address',
  413: 'This is too much at once',
  415: 'This kind of content is not taken',
  422: 'There is a problem',
  500: 'Something went wrong here',
}

/** A failure in the form the asker can use: JSON for programs, a part for htmx, a page for people. */
function failed(c: Context, status: ContentfulStatusCode, text: string) {
  if (c.req.path.startsWith('/api/')) return c.json({ problems: [{ path: '', message: text }] }, status)
  const title = TITLES[status] ?? 'This did not work'
  const asPart = c.req.header('HX-Request') === 'true'
  return showPage(
    c,
    asPart ? <MessagePart title={title} text={text} /> : <MessagePage title={title} text={text} />,
    status,
  )
}

export const notFound = (c: Context) => failed(c, 404, 'The address may have been mistyped or cut short.')

export function onError(error: Error, c: Context) {
  if (error instanceof HTTPException) return failed(c, error.status as ContentfulStatusCode, error.message)
  console.error(error)
  return failed(
    c,
    500,
    'The fault is in this program, not in what was asked. The brief in the address is not lost.',
  )
}
