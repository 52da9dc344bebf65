import { timingSafeEqual } from 'node:crypto'
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import type { Keeping } from '../kept-store/keeping.ts'
import type { WayIn } from '../people/way-in.ts'
import { isThisMachine, nameOf } from '../serving/own-names.ts'

/** What workers have before them. */
export interface LaneFigures {
  readonly lane: string
  readonly waiting: number
  readonly workers: number
  readonly answered: number
}

/** A request that is over. */
export interface Over {
  readonly method: string
  readonly route: string
  readonly status: number
  readonly ms: number
}

const METHODS = ['GET', 'HEAD', 'POST', 'PUT', 'DELETE']

/** Figures of a program for whoever watches it (in the text form of Prometheus): of numbers and times, never of contents. */
export class Metrics {
  readonly #registry = new Registry()
  readonly #requests: Counter
  readonly #seconds: Histogram

  constructor(lanes: () => readonly LaneFigures[], keeping: Keeping) {
    const registers = [this.#registry]
    collectDefaultMetrics({ register: this.#registry })
    this.#requests = new Counter({
      name: 'gritwise_requests_total',
      help: 'Requests that are over',
      labelNames: ['method', 'route', 'status'],
      registers,
    })
    this.#seconds = new Histogram({
      name: 'gritwise_request_seconds',
      help: 'Time from the head of a request to the end of its answer',
      labelNames: ['route'],
      buckets: [0.005, 0.02, 0.1, 0.5, 2, 10, 30],
      registers,
    })
    const ofLanes = (name: string, help: string, figure: (one: LaneFigures) => number) =>
      new Gauge({
        name,
        help,
        labelNames: ['lane'],
        registers,
        collect() {
          for (const one of lanes()) this.set({ lane: one.lane }, figure(one))
        },
      })
    ofLanes('gritwise_pool_waiting', 'Work that waits for a worker', ({ waiting }) => waiting)
    ofLanes('gritwise_pool_workers', 'Workers that are ready', ({ workers }) => workers)
    ofLanes('gritwise_pool_answered', 'Work done since the start', ({ answered }) => answered)
    new Gauge({
      name: 'gritwise_store_reached',
      help: '1 where what is kept can be reached, 0 where it cannot or nothing is kept',
      registers,
      async collect() {
        this.set(await reached(keeping))
      },
    })
  }

  note({ method, route, status, ms }: Over): void {
    this.#requests.inc({ method: METHODS.includes(method) ? method : 'other', route, status })
    this.#seconds.observe({ route }, ms / 1000)
  }

  async answer(): Promise<Response> {
    const headers = { 'content-type': this.#registry.contentType, 'cache-control': 'no-store' }
    return new Response(await this.#registry.metrics(), { headers })
  }
}

const reached = (keeping: Keeping) =>
  keeping.store().then(
    (store) =>
      store.ping().then(
        () => 1,
        () => 0,
      ),
    () => 0,
  )

/** Why somebody may not read the figures, or null: on one's own machine everybody may; beyond it, who brings the token. */
export function mayNotWatch(request: Request, wayIn: WayIn, token: string | null): 401 | 403 | null {
  if (token === null) {
    const host = nameOf(request.headers.get('host') ?? new URL(request.url).host)
    return wayIn.kind === 'this-machine' && isThisMachine(host) ? null : 403
  }
  const given = Buffer.from(request.headers.get('authorization') ?? '')
  const wanted = Buffer.from(`Bearer ${token}`)
  return given.length === wanted.length && timingSafeEqual(given, wanted) ? null : 401
}
