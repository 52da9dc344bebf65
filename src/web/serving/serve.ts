import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { serve as listen } from '@hono/node-server'
import { loadRulebook } from '../../advice/book/rulebook.ts'
import { type Place, usualPlace } from '../../store/open.ts'
import { keepingIn } from '../kept-store/keeping.ts'
import { doorOf } from '../kept-store/who.ts'
import { door } from './door.ts'
import { answerHalfSent, MOST_HEADER_BYTES, PATIENCE } from './half-sent.ts'
import { ownThread } from './own-thread.ts'
import { type PoolSettings, startPool, usualSettings } from './pool.ts'
import { shortAddresses } from './short-address.ts'
import { finish } from './stopping.ts'

export interface Where {
  /** 0 takes any free port. */
  readonly port: number
  /** Address to listen on, e.g. "127.0.0.1" (this machine only). */
  readonly listen: string
  /** Folders of rules laid over the book. */
  readonly rules?: readonly string[]
  readonly pool?: Partial<PoolSettings>
  /** Where things are kept; what the surroundings say unless given. */
  readonly place?: Place
  /** Header in which a proxy in front names who asks. */
  readonly userHeader?: string | null
}

export interface Served {
  readonly server: Server
  readonly address: string
  /** Finishes what has been begun, takes nothing new, and ends the workers. */
  readonly stop: () => Promise<void>
}

/** Starts the pages and the API, and says where they are. Throws RulebookError where the rules are not in order. */
export function serve({
  port,
  listen: hostname,
  rules = [],
  pool: settings,
  place,
  userHeader = null,
}: Where): Promise<Served> {
  if (rules.length > 0) loadRulebook(rules)
  const pool = startPool(rules, { ...usualSettings(), ...settings })
  const here = ownThread(
    {
      workforce: pool.workforce,
      keeping: keepingIn(place ?? usualPlace()),
      door: doorOf(hostname, userHeader),
    },
    pool.answer,
  )
  return new Promise((resolve, reject) => {
    const server = listen(
      {
        fetch: door(shortAddresses(here.answers)).fetch,
        port,
        hostname,
        serverOptions: { maxHeaderSize: MOST_HEADER_BYTES, ...PATIENCE },
      },
      (info: AddressInfo) => {
        const host = info.family === 'IPv6' ? `[${info.address}]` : info.address
        const address = `http://${host}:${info.port}/`
        console.log(`gritwise is at ${address}`)
        const stop = async () => {
          await finish(server)
          await here.close()
          await pool.close()
        }
        resolve({ server, address, stop })
      },
    ) as Server
    answerHalfSent(server)
    server.once('error', (error) => {
      void pool.close()
      reject(error)
    })
  })
}
