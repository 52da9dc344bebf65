import type { Server } from 'node:http'

/** Time for what has been begun once the program is told to stop, ms. */
const FINISHING_MS = 10_000

/** Takes no more requests, lets those begun come to their end, for ten seconds at most. */
export function finish(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const cut = setTimeout(() => server.closeAllConnections(), FINISHING_MS)
    server.close(() => {
      clearTimeout(cut)
      resolve()
    })
    server.closeIdleConnections()
  })
}
