import { once } from 'node:events'
import { availableParallelism } from 'node:os'
import { parseArgs } from 'node:util'
import { openStore, usualPlace } from '../store/open.ts'
import { keepingIn } from '../web/kept-store/keeping.ts'
import { sharedWork } from '../web/lines/shared-work.ts'
import { startLane } from '../web/serving/lane.ts'
import { workforceOf } from '../web/serving/workforce.ts'
import { InputError } from './input.ts'
import { Trouble } from './output.ts'
import { wholeNumber } from './whole-number.ts'

/** gritwise work [--workers N] [--rules DIR]; takes batches of tables until told to stop */
export async function workCommand(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      workers: { type: 'string' },
      rules: { type: 'string', multiple: true, default: [] },
    },
  })
  const threads =
    values.workers === undefined ? availableParallelism() : wholeNumber('--workers', values.workers, 1, 64)
  const place = usualPlace()
  if (!('url' in place))
    throw new InputError('work takes tables that others have sent to a PostgreSQL: give DATABASE_URL')
  await openStore(place).then(
    (store) => store.close(),
    (error) => {
      throw new Trouble(`the database cannot be used: ${(error as Error).message}`)
    },
  )
  const lane = startLane({ threads, overlays: values.rules })
  const keeping = keepingIn(place)
  const work = sharedWork({
    url: place.url,
    keeping,
    workforce: workforceOf(lane, threads),
    rules: values.rules,
  })
  const told = Promise.race([once(process, 'SIGTERM'), once(process, 'SIGINT')])
  process.stdout.write(`gritwise works on tables with ${threads} worker${threads === 1 ? '' : 's'}\n`)
  await told
  await work.close()
  await keeping.close()
  await lane.destroy()
  return 0
}
