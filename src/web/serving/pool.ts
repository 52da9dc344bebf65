import { createHash } from 'node:crypto'
import { availableParallelism } from 'node:os'
import { Piscina } from 'piscina'
import type { Workforce } from '../../lines/read-lines.ts'
import type { LaneFigures } from '../watched/metrics.ts'
import { Answered, keyOf } from './answered.ts'
import { Busy } from './busy.ts'
import { answerOf, type CarriedAnswer, type CarriedRequest, carryRequest } from './carried.ts'
import { fromSource, startLane } from './lane.ts'
import { workforceOf } from './workforce.ts'

export interface PoolSettings {
  /** Workers for pages and API; pictures have one of their own beside them. */
  readonly threads: number
  /** Requests that may wait for a worker of a lane. */
  readonly queue: number
  /** Time a request may wait and be worked on, ms. */
  readonly budgetMs: number
  /** Pictures and the live control are practised before anybody asks for them. */
  readonly practises?: boolean
}

export const usualSettings = (): PoolSettings => ({
  threads: Math.max(2, availableParallelism()),
  queue: 128,
  budgetMs: 20_000,
  practises: !fromSource,
})

export interface Pool {
  /** Works out rows of a table; they wait their turn among the pages, a batch a worker at most. */
  readonly workforce: Workforce
  readonly answer: (request: Request) => Promise<Response>
  /** What is before the workers now. */
  readonly lanes: () => readonly LaneFigures[]
  readonly close: () => Promise<void>
}

/**
 * How long work goes on for a reader that has gone, ms: a person who types sends and takes back requests all the
 * time, and ending a worker costs more than short work.
 */
const GRACE_MS = 2000
const RETRY_S = 10

/** The first page is asked for as soon as there is an address; practice that began with it would be in its way, ms. */
const PRACTICE_AFTER_MS = 2000

/** Cards first, then the live control, one worker after the other: the others are free meanwhile. */
async function practise(pictures: Piscina, pages: Piscina, threads: number): Promise<void> {
  await pictures.run({}, { name: 'practise' })
  for (let prefer = 0; prefer < threads; prefer++)
    await pages.run({ [Piscina.queueOptionsSymbol]: { prefer } }, { name: 'practiseDial' })
}

/** Simulated pictures take longest and are asked for again and again: they wait for one another, not others for them. */
const isPicture = (path: string) => /^(?:\/b\/[\w-]+)?\/card|^\/api\/card$/.test(path)

/** The brief in an address, or else what is sent, tells which worker has it at hand. */
function preferred(url: URL, body: ArrayBuffer | null): number | null {
  const packed = /^\/b\/([\w-]+)\//.exec(url.pathname)?.[1] ?? url.searchParams.get('b')
  const said = packed ?? body
  if (said === null) return null
  return createHash('sha1')
    .update(typeof said === 'string' ? said : new Uint8Array(said))
    .digest()
    .readUInt32BE()
}

/** Answers requests in workers, so that the server's own thread is always free to take the next. */
export function startPool(overlays: readonly string[] = [], settings: PoolSettings = usualSettings()): Pool {
  const pages = startLane({ threads: settings.threads, overlays })
  const pictures = startLane({ threads: 1, overlays, drawsCards: true })
  const answered = new Answered()
  let closing = false
  // One that is ended in the middle of it has nobody to tell.
  const practising = settings.practises
    ? setTimeout(() => practise(pictures, pages, settings.threads).catch(() => {}), PRACTICE_AFTER_MS).unref()
    : undefined
  return {
    workforce: workforceOf(pages, settings.threads),
    answer: async (request) => {
      const url = new URL(request.url)
      const lane = isPicture(url.pathname) ? pictures : pages
      const carried = await carryRequest(request)
      const key = keyOf(carried)
      const known = answered.get(key)
      if (known) return answerOf(known)
      if (lane.queueSize >= settings.queue)
        throw new Busy(
          `${settings.queue} requests are waiting already. Try again in ${RETRY_S} seconds.`,
          RETRY_S,
        )
      try {
        const prefer = preferred(url, carried.body)
        const answer = await withinBudget(lane, carried, prefer, request.signal, settings.budgetMs)
        return answerOf(answered.keep(key, answer))
      } catch (error) {
        if (closing) throw new Busy('This program is being stopped.', RETRY_S)
        throw error
      }
    },
    lanes: () => [figuresOf('pages', pages), figuresOf('pictures', pictures)],
    close: async () => {
      closing = true
      clearTimeout(practising)
      await Promise.all([pages.destroy(), pictures.destroy()])
    },
  }
}

const figuresOf = (lane: string, { queueSize, threads, completed }: Piscina): LaneFigures => ({
  lane,
  waiting: queueSize,
  workers: threads.length,
  answered: completed,
})

async function withinBudget(
  lane: Piscina,
  carried: CarriedRequest,
  prefer: number | null,
  reader: AbortSignal,
  budgetMs: number,
): Promise<CarriedAnswer> {
  const stop = new AbortController()
  const late = setTimeout(() => stop.abort(), budgetMs)
  let leaving: NodeJS.Timeout | undefined
  const gone = () => {
    leaving = setTimeout(() => stop.abort(), Math.min(GRACE_MS, budgetMs))
  }
  if (reader.aborted) gone()
  else reader.addEventListener('abort', gone)
  try {
    const task = { ...carried, [Piscina.queueOptionsSymbol]: { prefer } }
    return (await lane.run(task, { signal: stop.signal })) as CarriedAnswer
  } catch (error) {
    if (stop.signal.aborted)
      throw new Busy(
        `This took longer than the ${budgetMs / 1000} seconds a request may take, so it was stopped. Ask for less at once: fewer inspection points, contaminants or machines; or try again when less is going on.`,
        RETRY_S,
      )
    if ((error as { code?: string }).code === 'ERR_WORKER_OUT_OF_MEMORY')
      throw new Busy(
        'This took more memory than one request may take, so it was stopped. Ask for less at once.',
        RETRY_S,
      )
    throw error
  } finally {
    clearTimeout(late)
    clearTimeout(leaving)
    reader.removeEventListener('abort', gone)
  }
}
