import { createRequire } from 'node:module'
import { pathToFileURL } from 'node:url'
import { Piscina } from 'piscina'
import { logFault } from '../watched/log.ts'

/** Source and build lie side by side in shape: the worker's file ends as this one does. */
export const fromSource = import.meta.url.endsWith('.ts')
const workerFile = new URL(fromSource ? './worker.ts' : './worker.js', import.meta.url)

/** Run from source, a worker has to be told how to read TypeScript. */
const sourceReader = () => ['--import', pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href]

/** A worker is ended, not the server, where one request takes more memory than this. */
const MOST_HEAP_MB = 1024
/** Room for what is soon forgotten: most of what a brief makes is, and a tenth of the work went into looking through too small a one. */
const YOUNG_HEAP_MB = 96

/** A worker that nobody has needed for so long is let go, down to the lane's fewest, ms. */
const IDLE_MS = 600_000

interface Preferring {
  /** Which worker has most likely answered about the same brief before; null where none has. */
  readonly prefer: number | null
}

/** Rule books laid over the house's own, as folders. */
export interface LaneOf {
  readonly threads: number
  /** Workers kept ready while nobody asks; all of them unless given. */
  readonly ready?: number
  readonly overlays: readonly string[]
  /** Its workers draw cards with a second hand. */
  readonly drawsCards?: boolean
}

/** Workers that answer requests one at a time each; a brief goes back to the worker that knows it, if that is free. */
export function startLane({ threads, ready = threads, overlays, drawsCards = false }: LaneOf): Piscina {
  const lane = new Piscina({
    filename: workerFile.href,
    minThreads: ready,
    maxThreads: threads,
    idleTimeout: IDLE_MS,
    workerData: { overlays, drawsCards },
    resourceLimits: { maxOldGenerationSizeMb: MOST_HEAP_MB, maxYoungGenerationSizeMb: YOUNG_HEAP_MB },
    ...(fromSource ? { execArgv: sourceReader() } : {}),
    loadBalancer: (task, workers) => {
      const { prefer } = (task as unknown as Record<symbol, Preferring>)[Piscina.queueOptionsSymbol] ?? {
        prefer: null,
      }
      const known = prefer === null ? undefined : workers[prefer % workers.length]
      const free = known?.currentUsage === 0 ? known : workers.find(({ currentUsage }) => currentUsage === 0)
      return free ?? null
    },
  })
  // A worker that ends between two requests is replaced; nobody waits for it.
  lane.on('error', (error) => logFault(error))
  return lane
}
