import type { Server } from 'node:http'

/** Time for what has been begun once the program is told to stop, ms. */
const FINISHING_MS = 10_000

/** Takes no more requests, lets those begun come to their end, for ten seconds at most. */
export function finish(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const cut = setTimeout(() => server.closeAllConnections(), FINISHING_MS)
    // A line kept open for more is let go as soon as its answer is out.
    const letGo = setInterval(() => server.closeIdleConnections(), 50)
    server.close(() => {
      clearTimeout(cut)
      clearInterval(letGo)
      resolve()
    })
  })
}
