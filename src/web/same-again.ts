import type { Context } from 'hono'

/** Names, from the worker to the server's thread, an answer that can be given again; it goes no further. */
export const SAME_AGAIN = 'gritwise-same-again'

/**
 * Marks an answer that the same request gets again on the same day under the same rule book: it is kept as bytes
 * (serving/answered.ts), so that coming back to a large page draws nothing anew.
 */
export const sameAgain = (c: Context) => c.header(SAME_AGAIN, 'today')
