import type { Server } from 'node:http'
import type { Socket } from 'node:net'
import { MessagePage } from '../../../views/message-page.tsx'

/** A brief travels in the address, so requests may carry longer lines than usual. */
export const MOST_HEADER_BYTES = 64 * 1024

/** Time for the head of a request, and for the whole of it, ms; looked after every few seconds. */
export const PATIENCE = { headersTimeout: 10_000, requestTimeout: 30_000, connectionsCheckingInterval: 2_000 }

const LINES: Readonly<
  Record<string, { readonly status: string; readonly title: string; readonly text: string }>
> = {
  HPE_HEADER_OVERFLOW: {
    status: '431 Request Header Fields Too Large',
    title: 'The address is too long',
    text: `An address takes at most ${MOST_HEADER_BYTES / 1024} kB. Bring a brief of that size in as a file: on the page of the brief, under “Load a brief”.`,
  },
  ERR_HTTP_REQUEST_TIMEOUT: {
    status: '408 Request Timeout',
    title: 'The request did not arrive',
    text: 'It was begun and not finished in time.',
  },
}
const UNREADABLE = {
  status: '400 Bad Request',
  title: 'This cannot be read',
  text: 'What came is not a request.',
}

/** What never becomes a request is answered in words as well, and its line closed. */
export function answerHalfSent(server: Server): void {
  server.on('clientError', (error: NodeJS.ErrnoException, socket: Socket) => {
    if (error.code === 'ECONNRESET' || !socket.writable) return socket.destroy()
    const { status, title, text } = LINES[error.code ?? ''] ?? UNREADABLE
    const page = String(MessagePage({ title, text }))
    const head = [
      `HTTP/1.1 ${status}`,
      'content-type: text/html; charset=UTF-8',
      `content-length: ${Buffer.byteLength(page)}`,
      'cache-control: no-store',
      "content-security-policy: default-src 'self'; frame-ancestors 'none'",
      'connection: close',
    ]
    socket.end(`${head.join('\r\n')}\r\n\r\n${page}`)
    // What the other side still sends is read and dropped, so that it gets to read the answer.
    socket.resume()
    setTimeout(() => socket.destroy(), PATIENCE.connectionsCheckingInterval).unref()
  })
}
