import { once } from 'node:events'
import { createWriteStream } from 'node:fs'
import { rename, rm, stat } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import type { Writable } from 'node:stream'
import { parseArgs } from 'node:util'
import { loadRulebook } from '../advice/book/rulebook.ts'
import type { Problem } from '../contract/index.ts'
import { fileTrouble } from '../intake/file-text.ts'
import { type OpenedTable, openTable, products, type TableSource } from '../lines/read-lines.ts'
import { fileSource, withPutDown } from '../lines/table-source.ts'
import { streamed } from '../lines/write/streamed.ts'
import { startLane } from '../web/serving/lane.ts'
import { workforceOf } from '../web/serving/workforce.ts'
import { InputError } from './input.ts'
import { loadBrief } from './load-brief.ts'
import { Trouble, writeTrouble } from './output.ts'
import { progressOn } from './progress.ts'
import { linesText } from './text/lines-text.ts'
import { wholeNumber } from './whole-number.ts'

/** gritwise lines PRODUCTS.csv [--brief LINE.json] [--out FILE] [--json] [--workers N] [--rules DIR] */
export async function linesCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      brief: { type: 'string' },
      out: { type: 'string' },
      json: { type: 'boolean', default: false },
      workers: { type: 'string' },
      rules: { type: 'string', multiple: true, default: [] },
    },
  })
  const [path, ...more] = positionals
  if (!path || more.length > 0)
    throw new InputError('lines takes one table of products: a CSV file, or - for standard input')
  if (path === '-' && values.brief === '-')
    throw new InputError('products and brief cannot both come from standard input')
  const threads =
    values.workers === undefined ? availableParallelism() : wholeNumber('--workers', values.workers, 1, 64)
  if (values.rules.length > 0) loadRulebook(values.rules)
  const base = values.brief === undefined ? null : (await loadBrief(values.brief)).given
  const work = async (source: TableSource) => {
    const opened = await openTable(source, base)
    if (!opened.ok) throw new InputError(problemText(opened.problems))
    const { out = null, json } = values
    return workOut(opened.table, { out, json, threads, overlays: values.rules })
  }
  if (path === '-') return withPutDown(process.stdin as AsyncIterable<Uint8Array>, work)
  await readable(path)
  return work(fileSource(path))
}

interface Asked {
  readonly out: string | null
  readonly json: boolean
  readonly threads: number
  readonly overlays: readonly string[]
}

async function workOut(table: OpenedTable, { out, json, threads, overlays }: Asked): Promise<number> {
  const lane = startLane({ threads, overlays })
  const progress = progressOn(process.stderr, table.rows)
  const sink = out === null ? process.stdout : createWriteStream(`${out}.part`)
  try {
    const coming = streamed(
      table,
      products(table, workforceOf(lane, threads)),
      json ? 'json' : 'csv',
      progress.step,
    )
    let step = await coming.next()
    for (; !step.done; step = await coming.next()) await write(sink, step.value)
    progress.end()
    if (out !== null) {
      sink.end()
      await once(sink, 'finish')
      await rename(`${out}.part`, out)
    }
    const said = linesText(step.value)
    if (out === null) process.stderr.write(said)
    else process.stdout.write(said)
    return step.value.bad > 0 ? 1 : 0
  } catch (error) {
    if (out === null || (error as NodeJS.ErrnoException).code === undefined) throw error
    throw new Trouble(`cannot write ${out}: ${writeTrouble(error)}`)
  } finally {
    progress.end()
    await lane.destroy()
    if (out !== null) await rm(`${out}.part`, { force: true })
  }
}

/** Waits where the reader is slower than the work. */
async function write(sink: Writable, text: string): Promise<void> {
  if (!sink.write(text)) await once(sink, 'drain')
}

async function readable(path: string): Promise<void> {
  const found = await stat(path).catch((error) => {
    throw new InputError(`cannot read ${path}: ${fileTrouble(error)}`)
  })
  if (found.isDirectory()) throw new InputError(`cannot read ${path}: it is a folder, not a file`)
}

function problemText(problems: readonly Problem[]): string {
  const lines = problems.map(({ path, message }) => `  ${path ? `${path}: ` : ''}${message}`)
  return `the table of products has ${lines.length} problem${lines.length === 1 ? '' : 's'}:\n${lines.join('\n')}`
}
