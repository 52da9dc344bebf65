import { once } from 'node:events'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { getRequestListener } from '@hono/node-server'
import { loadRulebook } from '../../advice/book/rulebook.ts'
import { type Place, usualPlace } from '../../store/open.ts'
import { keepingIn } from '../kept-store/keeping.ts'
import { sharedWork } from '../lines/shared-work.ts'
import { workedHere } from '../lines/table-work.ts'
import { wayInOf } from '../people/way-in.ts'
import { type LogLevel, log } from '../watched/log.ts'
import { watch } from '../watched/watching.ts'
import { door } from './door.ts'
import { answerHalfSent, MOST_HEADER_BYTES, PATIENCE } from './half-sent.ts'
import { ownNames } from './own-names.ts'
import { ownThread } from './own-thread.ts'
import { type PoolSettings, startPool, usualSettings } from './pool.ts'
import { readyFiles } from './ready-files.ts'
import { finish } from './stopping.ts'

export interface Where {
  /** 0 takes any free port. */
  readonly port: number
  /** Address to listen on, e.g. "127.0.0.1" (this machine only). */
  readonly listen: string
  /** Names it is asked by beside its own, where a proxy stands in front of it. */
  readonly names?: readonly string[]
  /** Folders of rules laid over the book. */
  readonly rules?: readonly string[]
  readonly pool?: Partial<PoolSettings>
  /** Where things are kept; what the surroundings say unless given. */
  readonly place?: Place
  /** Header in which a proxy in front names who asks. */
  readonly userHeader?: string | null
  /** People sign in with accounts of the store. */
  readonly accounts?: boolean
  /** What is logged: every request where other machines ask, faults only on one's own, unless given. */
  readonly logs?: LogLevel | null
  /** What a watcher of /metrics brings along; null lets in who asks on one's own machine, and nobody else. */
  readonly metricsToken?: string | null
}

export interface Served {
  readonly server: Server
  readonly address: string
  /** Finishes what has been begun, takes nothing new, and ends the workers. */
  readonly stop: () => Promise<void>
}

/** Starts the pages and the API, and says where they are. Throws RulebookError where the rules are not in order, NobodyToldWho where nobody says who may come. */
export async function serve({
  port,
  listen: hostname,
  names = [],
  rules = [],
  pool: settings,
  place,
  userHeader = null,
  accounts = false,
  logs = null,
  metricsToken = null,
}: Where): Promise<Served> {
  if (rules.length > 0) loadRulebook(rules)
  const wayIn = wayInOf(hostname, { userHeader, accounts })
  const ready = await readyFiles(door(() => new Response()).fetch)
  const server = createServer({ maxHeaderSize: MOST_HEADER_BYTES, ...PATIENCE })
  answerHalfSent(server)
  // Where the port is taken, no worker has been started; no request comes before this has gone on to its end.
  await once(server.listen(port, hostname), 'listening')
  const pool = startPool(rules, { ...usualSettings(), ...settings })
  const where = place ?? usualPlace()
  const keeping = keepingIn(where)
  const metrics = watch({ server, lanes: pool.lanes, keeping, wayIn, token: metricsToken })
  log.level = logs ?? (wayIn.kind === 'this-machine' ? 'error' : 'info')
  const shared =
    'url' in where ? sharedWork({ url: where.url, keeping, workforce: pool.workforce, rules }) : null
  const tables = shared ?? workedHere(pool.workforce)
  const here = ownThread({ tables, keeping, wayIn, metrics }, pool.answer)
  // Where people sign in, a name that somebody else pointed here brings no cookie and finds nobody; a proxy has its own.
  const ownName = wayIn.kind === 'this-machine' ? ownNames(hostname, names) : undefined
  const others = getRequestListener(door(here.answers, ownName, names).fetch, { hostname })
  server.on('request', (request, answer) => {
    if (!ready(request, answer)) void others(request, answer)
  })
  const at = server.address() as AddressInfo
  const host = at.family === 'IPv6' ? `[${at.address}]` : at.address
  const address = `http://${host}:${at.port}/`
  console.log(`gritwise is at ${address}`)
  const stop = async () => {
    await finish(server)
    await shared?.close()
    await here.close()
    await pool.close()
  }
  return { server, address, stop }
}
