import { parentPort } from 'node:worker_threads'
import { beforeCard, CardError, cardOf } from '../../card/card.ts'
import type { HandTask } from './second-hand.ts'

/** The second hand of whoever draws cards: one part of a card at a time, on a processor of its own. */
parentPort?.on('message', ({ id, what, brief, options }: HandTask) => {
  try {
    const done = what === 'before' ? beforeCard(brief, options) : cardOf(brief, options)
    parentPort!.postMessage({ id, done })
  } catch (error) {
    const { message } = error as Error
    parentPort!.postMessage({ id, failed: { message, ofCard: error instanceof CardError } })
  }
})
