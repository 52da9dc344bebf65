import { closeSync, fstatSync, openSync, readSync } from 'node:fs'
import { MOST_BYTES } from './bounds.ts'

export type ReadFile = { ok: true; text: string } | { ok: false; because: string }

const WORDS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EISDIR: 'it is a folder, not a file',
  EACCES: 'it may not be read',
  EPERM: 'it may not be read',
}

/** Why a file cannot be read or written, in words; the system's own code where there are none. */
export const fileTrouble = (error: unknown): string => {
  const { code = 'unreadable' } = error as NodeJS.ErrnoException
  return WORDS[code] ?? code
}

/** Text of bytes, without a byte order mark. */
export const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes)

/** Text of a file as far as files are taken: never more than `most` bytes are held, whatever it claims to be. */
export function readFileWithin(path: string, most: number = MOST_BYTES): ReadFile {
  let file: number | null = null
  try {
    file = openSync(path, 'r')
    if (fstatSync(file).isDirectory()) return { ok: false, because: WORDS.EISDIR! }
    const bytes = Buffer.alloc(most + 1)
    let length = 0
    for (let read = -1; read !== 0 && length <= most; length += read)
      read = readSync(file, bytes, length, bytes.length - length, null)
    if (length > most)
      return { ok: false, because: `it has more than ${most / 1024} kB, the most that is read` }
    return { ok: true, text: textOf(bytes.subarray(0, length)) }
  } catch (error) {
    return { ok: false, because: fileTrouble(error) }
  } finally {
    if (file !== null) closeSync(file)
  }
}
