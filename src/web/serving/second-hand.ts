import { Worker } from 'node:worker_threads'
import { type BeforeCard, type Card, CardError, type CardOptions } from '../../card/card.ts'
import type { OtherHand } from '../../card/shared-card.ts'
import type { Brief } from '../../contract/index.ts'

/** A part of a card, as it travels to the thread that works it out. */
export interface HandTask {
  readonly id: number
  readonly what: 'before' | 'card'
  readonly brief: Brief
  readonly options: CardOptions
}

interface HandAnswer {
  readonly id: number
  readonly done?: unknown
  readonly failed?: { readonly message: string; readonly ofCard: boolean }
}

interface Waiting {
  readonly resolve: (done: unknown) => void
  readonly reject: (error: Error) => void
}

const handFile = new URL('./card-hand.js', import.meta.url)

/** Memory of the hand, MB: a part of a card takes less than half of it. */
const LIMITS = { maxOldGenerationSizeMb: 512, maxYoungGenerationSizeMb: 96 }

/**
 * A thread of this one that works out parts of cards. It ends with the thread that started it, and does not keep it
 * alive. Null where the program runs from its source: a thread of a thread cannot be told there how to read it.
 */
export function secondHand(): OtherHand | null {
  if (import.meta.url.endsWith('.ts')) return null
  const waiting = new Map<number, Waiting>()
  let worker: Worker | null = null
  let last = 0
  const start = () => {
    const started = new Worker(handFile, { resourceLimits: LIMITS })
    started.unref()
    started.on('message', ({ id, done, failed }: HandAnswer) => {
      const asked = waiting.get(id)
      waiting.delete(id)
      if (!failed) asked?.resolve(done)
      else asked?.reject(failed.ofCard ? new CardError(failed.message) : new Error(failed.message))
    })
    started.on('error', (error) => {
      worker = null
      for (const { reject } of waiting.values()) reject(error)
      waiting.clear()
    })
    return started
  }
  const ask = (what: HandTask['what'], brief: Brief, options: CardOptions) =>
    new Promise<unknown>((resolve, reject) => {
      worker ??= start()
      const task: HandTask = { id: ++last, what, brief, options }
      waiting.set(task.id, { resolve, reject })
      worker.ref()
      worker.postMessage(task)
    }).finally(() => {
      if (waiting.size === 0) worker?.unref()
    })
  worker = start()
  return {
    before: (brief, options) => ask('before', brief, options) as Promise<BeforeCard[]>,
    card: (brief, options) => ask('card', brief, options) as Promise<Card>,
  }
}
