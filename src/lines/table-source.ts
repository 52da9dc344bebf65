import { createReadStream, createWriteStream } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import type { TableSource } from './read-lines.ts'

/** A file on disk, read anew each time. */
export const fileSource =
  (path: string): TableSource =>
  () =>
    createReadStream(path)

/** A text held already. */
export const bytesSource = (bytes: Uint8Array): TableSource =>
  async function* () {
    yield bytes
  }

/** Hands on what can be read only once, put down in a file while it is needed; the file goes when the work ends. */
export async function withPutDown<Answer>(
  stream: AsyncIterable<Uint8Array>,
  work: (source: TableSource) => Promise<Answer>,
): Promise<Answer> {
  const folder = await mkdtemp(join(tmpdir(), 'gritwise-lines-'))
  try {
    const path = join(folder, 'table.csv')
    await pipeline(stream, createWriteStream(path, { mode: 0o600 }))
    return await work(fileSource(path))
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
