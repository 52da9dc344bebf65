import { once } from 'node:events'
import { parseArgs } from 'node:util'
import { quoted } from '../contract/quoted.ts'
import { NobodyToldWho, wayInOf } from '../web/people/way-in.ts'
import { serve } from '../web/serving/serve.ts'
import { LOG_LEVELS } from '../web/watched/log.ts'
import { InputError } from './input.ts'
import { Trouble } from './output.ts'
import { wholeNumber } from './whole-number.ts'

const MOST_WORKERS = 64
const MOST_BUDGET_S = 3600

/** Why the program cannot listen where it was told to, by the system's code. */
const CANNOT_LISTEN: Readonly<Record<string, (listen: string, port: number) => Error>> = {
  EADDRINUSE: (listen, port) =>
    new Trouble(`something listens on port ${port} of ${listen} already; choose another --port`),
  EACCES: (_, port) => new Trouble(`port ${port} is not open to you here; choose a --port from 1024 up`),
  EADDRNOTAVAIL: (listen) => new InputError(`--listen: ${listen} is no address of this machine`),
  ENOTFOUND: (listen) => new InputError(`--listen: ${listen} is not the name of a machine`),
  EAI_AGAIN: (listen) => new InputError(`--listen: ${listen} is not the name of a machine`),
}

/** gritwise serve [--port 8317] [--listen 127.0.0.1] [--name HOST] [--rules DIR] [--workers N] [--budget SECONDS] [--log error|info]; until told to stop */
export async function serveCommand(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      port: { type: 'string', default: '8317' },
      listen: { type: 'string', default: '127.0.0.1' },
      name: { type: 'string', multiple: true, default: [] },
      rules: { type: 'string', multiple: true, default: [] },
      workers: { type: 'string' },
      budget: { type: 'string', default: '20' },
      'user-header': { type: 'string' },
      accounts: { type: 'boolean', default: false },
      log: { type: 'string' },
    },
  })
  const port = wholeNumber('--port', values.port, 0, 65535)
  const { listen } = values
  if (!/^[\w.:%-]+$/.test(listen))
    throw new InputError(`--listen takes an address; ${quoted(listen)} was given`)
  for (const name of values.name)
    if (!/^[\w.-]+$/.test(name))
      throw new InputError(`--name takes the name of a machine, without a port; ${quoted(name)} was given`)
  const pool = {
    budgetMs: 1000 * wholeNumber('--budget', values.budget, 1, MOST_BUDGET_S),
    ...(values.workers === undefined
      ? {}
      : { threads: wholeNumber('--workers', values.workers, 1, MOST_WORKERS) }),
  }
  const logs = LOG_LEVELS.find((level) => level === values.log) ?? null
  if (values.log !== undefined && logs === null)
    throw new InputError(`--log takes ${LOG_LEVELS.join(' or ')}; ${quoted(values.log)} was given`)
  const userHeader = values['user-header'] ?? null
  const { accounts } = values
  try {
    wayInOf(listen, { userHeader, accounts })
  } catch (error) {
    throw error instanceof NobodyToldWho ? new InputError(error.message) : error
  }
  // Heard from the start: whoever reads the address may send it at once.
  const told = Promise.race([once(process, 'SIGTERM'), once(process, 'SIGINT')])
  const served = await serve({
    port,
    listen,
    names: values.name,
    rules: values.rules,
    pool,
    userHeader,
    accounts,
    logs,
    metricsToken: process.env.GRITWISE_METRICS_TOKEN || null,
  }).catch((error) => {
    throw CANNOT_LISTEN[(error as NodeJS.ErrnoException).code ?? '']?.(listen, port) ?? error
  })
  await told
  await served.stop()
  return 0
}
