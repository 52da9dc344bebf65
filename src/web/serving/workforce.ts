import type { Piscina } from 'piscina'
import type { Worked } from '../../lines/advise-row.ts'
import type { Workforce } from '../../lines/read-lines.ts'

/**
 * The workers of a lane for the rows of tables: however many tables are worked on, no more batches wait or run than
 * there are workers, so that a page asked for meanwhile waits for one batch at most.
 */
export function workforceOf(lane: Piscina, threads: number): Workforce {
  let running = 0
  const waiting: (() => void)[] = []
  return {
    atOnce: 2 * threads,
    work: async (batch) => {
      if (running >= threads) await new Promise<void>((go) => waiting.push(go))
      else running++
      try {
        return (await lane.run(batch, { name: 'products' })) as Worked
      } finally {
        const next = waiting.shift()
        if (next) next()
        else running--
      }
    },
  }
}
