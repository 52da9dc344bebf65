import type PgBoss from 'pg-boss'

/** A batch somebody has to work on. */
export interface Errand {
  readonly table: string
  readonly number: number
}

export interface Taken extends Errand {
  /** Taken by so many programs that died or failed that nobody is to take it any more. */
  readonly givenUp: boolean
  readonly done: () => Promise<void>
}

export interface QueueSettings {
  /** Whoever has not answered after so long is held for dead, s. */
  readonly patienceS: number
  /** How often that is looked after, s. */
  readonly lookS: number
  /** How often a batch is given to another. */
  readonly again: number
}
const USUAL: QueueSettings = { patienceS: 60, lookS: 5, again: 5 }

/**
 * Batches on their way to whoever is free, in PostgreSQL. A batch taken by a program that dies is given to another;
 * one that is only slow is then worked on twice, and whoever keeps the result first has done it (ProductTables.put).
 */
export class Queue {
  readonly #boss: PgBoss
  readonly #name: string

  private constructor(boss: PgBoss, name: string) {
    this.#boss = boss
    this.#name = name
  }

  /** Programs share a queue by its name: only what gives the same answers may. */
  static async open(url: string, name: string, settings: Partial<QueueSettings> = {}): Promise<Queue> {
    const { patienceS, lookS, again } = { ...USUAL, ...settings }
    const { default: Boss } = await import('pg-boss')
    const boss = new Boss({
      connectionString: url,
      max: 4,
      schedule: false,
      maintenanceIntervalSeconds: lookS,
    })
    // What cannot be done now is told to whoever asked; the upkeep tries again by itself.
    boss.on('error', () => {})
    await oneAtATime(url, async () => {
      await boss.start()
      await make(boss, { name: givenUp(name) })
      await make(boss, {
        name,
        retryLimit: again,
        expireInSeconds: patienceS,
        deadLetter: givenUp(name),
      })
    })
    return new Queue(boss, name)
  }

  /** The first batches of every table first, so that a reader gets products at once and no table waits for the whole of another. */
  async send(errands: readonly Errand[]): Promise<void> {
    await this.#boss.insert(errands.map((data) => ({ name: this.#name, data, priority: -data.number })))
  }

  /** The next batch nobody works on; null where there is none. */
  async take(): Promise<Taken | null> {
    return (await this.#fetch(this.#name)) ?? this.#fetch(givenUp(this.#name))
  }

  async #fetch(queue: string): Promise<Taken | null> {
    const [job] = await this.#boss.fetch<Errand>(queue)
    if (!job) return null
    return {
      ...job.data,
      givenUp: queue !== this.#name,
      done: async () => {
        await this.#boss.complete(queue, job.id)
      },
    }
  }

  async close(): Promise<void> {
    await this.#boss.stop({ graceful: false, wait: true })
  }
}

/** Programs that make their tables at the same moment wait for one another: PostgreSQL would end one with a deadlock. */
async function oneAtATime(url: string, work: () => Promise<void>): Promise<void> {
  const { default: pg } = await import('pg')
  const turn = new pg.Client({ connectionString: url })
  await turn.connect()
  try {
    await turn.query("SELECT pg_advisory_lock(hashtext('gritwise queues'))")
    await work()
  } finally {
    await turn.end()
  }
}

async function make(boss: PgBoss, queue: PgBoss.Queue): Promise<void> {
  if (!(await boss.getQueue(queue.name))) await boss.createQueue(queue.name, queue)
}

const givenUp = (name: string) => `${name}-given-up`
