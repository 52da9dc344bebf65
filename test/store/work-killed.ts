import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { fileURLToPath } from 'node:url'
import type { LineProduct } from '../../src/contract/index.ts'
import { openTable } from '../../src/lines/read-lines.ts'
import { keepingIn } from '../../src/web/kept-store/keeping.ts'
import { sharedWork } from '../../src/web/lines/shared-work.ts'
import { manyProducts } from '../load/many-products.ts'
import { startPostgres } from './databases.ts'

const PROGRAM = fileURLToPath(new URL('../../dist/src/main.js', import.meta.url))

/** A table worked out by two programs, one of which is ended by kill -9 after every so many products and started anew. */
export async function workKilled(rows: number, every: number) {
  const database = await startPostgres()
  const url = database.address.DATABASE_URL!
  const worker = (): ChildProcess =>
    spawn(process.execPath, [PROGRAM, 'work', '--workers', '1'], {
      env: { ...process.env, DATABASE_URL: url },
      stdio: ['ignore', 'ignore', 'inherit'],
    })
  const keeping = keepingIn({ url })
  // Hands on and takes nothing itself.
  const nobody = { atOnce: 0, work: () => Promise.reject(new Error('none')) }
  const settings = { patienceS: 5, lookS: 1 }
  const shared = sharedWork({ url, keeping, workforce: nobody, rules: [], settings })
  const source = async function* () {
    for (const line of manyProducts(rows, ['cheddar'])) yield new TextEncoder().encode(line)
  }
  const opened = await openTable(source, null)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  const coming = await shared.products(opened.table)
  const steady = worker()
  let mortal = worker()
  const seen: LineProduct[] = []
  let killed = 0
  try {
    let step = await coming.next()
    for (; !step.done; step = await coming.next()) {
      seen.push(step.value)
      if (seen.length % every !== 0) continue
      const ended = once(mortal, 'exit')
      if (!mortal.kill('SIGKILL')) throw new Error('a program at work ended by itself')
      await ended
      killed++
      mortal = worker()
    }
    const inOrder = seen.every(({ title }, at) => title === `product ${at}`)
    return { rows, killed, products: seen.length, bad: seen.filter(({ ok }) => !ok).length, inOrder }
  } finally {
    mortal.kill('SIGKILL')
    steady.kill('SIGTERM')
    await once(steady, 'exit')
    await shared.close()
    await keeping.close()
    database.end()
  }
}
