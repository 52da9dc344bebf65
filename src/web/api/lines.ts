import type { Context } from 'hono'
import { parseBrief } from '../../brief/index.ts'
import type { BriefInput } from '../../contract/index.ts'
import { MOST_BYTES_OF_RUNS } from '../../intake/bounds.ts'
import { openTable, type TableSource } from '../../lines/read-lines.ts'
import { bytesSource } from '../../lines/table-source.ts'
import { streamed } from '../../lines/write/streamed.ts'
import { refuse } from '../asked/refusal.ts'
import type { TableWork } from '../lines/table-work.ts'
import { partsOfBody } from './json-body.ts'

/**
 * POST a table of products (text/csv, or JSON { csv, brief? }), get the products as they are worked out, in order: a
 * JSON value a line with the summary last, or CSV where that is asked for. 422 for a table that cannot be read at all.
 */
export const linesApi = (work: TableWork) => async (c: Context) => {
  const { source, base } = await tableOf(c)
  const opened = await openTable(source, base)
  if (!opened.ok) return refuse(opened.problems)
  const as = (c.req.header('accept') ?? '').includes('text/csv') ? 'csv' : 'json'
  return c.body(asStream(streamed(opened.table, await work.products(opened.table), as)), 200, {
    'content-type': as === 'csv' ? 'text/csv; charset=utf-8' : 'application/x-ndjson',
    'x-content-type-options': 'nosniff',
  })
}

async function tableOf(c: Context): Promise<{ source: TableSource; base: BriefInput | null }> {
  const type = (c.req.header('content-type') ?? '').split(';')[0]?.trim().toLowerCase()
  if (type === 'text/csv')
    return { source: bytesSource(new Uint8Array(await c.req.arrayBuffer())), base: null }
  const { csv, brief } = await partsOfBody(c, ['csv', 'brief'], MOST_BYTES_OF_RUNS)
  if (typeof csv !== 'string')
    return refuse([{ path: 'csv', message: 'csv must be the text of a table of products' }])
  const source = bytesSource(new TextEncoder().encode(csv))
  if (brief === undefined) return { source, base: null }
  const parsed = parseBrief(brief)
  return parsed.ok
    ? { source, base: parsed.brief.given }
    : refuse(parsed.problems.map((one) => ({ ...one, path: `brief.${one.path}` })))
}

/** Text as it comes; nothing is made before the reader takes it, and nothing more once the reader has gone. */
export function asStream(texts: AsyncGenerator<string, unknown>): ReadableStream<Uint8Array> {
  const bytes = new TextEncoder()
  return new ReadableStream(
    {
      pull: async (stream) => {
        const step = await texts.next()
        if (step.done) stream.close()
        else stream.enqueue(bytes.encode(step.value))
      },
      cancel: async () => {
        await texts.return(undefined)
      },
    },
    { highWaterMark: 1 },
  )
}
