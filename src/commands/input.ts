import { MOST_BYTES } from '../intake/bounds.ts'
import { readFileWithin, textOf } from '../intake/file-text.ts'
import { readJsonText } from '../intake/json-text.ts'

/** The input of a command was wrong: shown on standard error, exit code 2, nothing written. */
export class InputError extends Error {}

/** Text of a file, or of standard input for "-"; no more than `most` bytes are taken. */
export async function readText(path: string, most: number = MOST_BYTES): Promise<string> {
  if (path === '-') return fromStandardInput(most)
  const read = readFileWithin(path, most)
  if (!read.ok) throw new InputError(`cannot read ${path}: ${read.because}`)
  return read.text
}

async function fromStandardInput(most: number): Promise<string> {
  const chunks: Buffer[] = []
  let length = 0
  for await (const chunk of process.stdin) {
    chunks.push(chunk as Buffer)
    length += (chunk as Buffer).length
    if (length > most)
      throw new InputError(`standard input has more than ${most / 1024} kB, the most that is read`)
  }
  return textOf(Buffer.concat(chunks))
}

/** JSON of a file or standard input; the error says where it stops being JSON. */
export async function readJson(path: string): Promise<unknown> {
  const read = readJsonText(await readText(path))
  if (!read.ok) throw new InputError(`${path === '-' ? 'standard input' : path}: ${read.because}`)
  return read.value
}
