import { readFile } from 'node:fs/promises'

/** The input of a command was wrong: shown on standard error, exit code 2, nothing written. */
export class InputError extends Error {}

/** Text of a file, or of standard input for "-". */
export async function readText(path: string): Promise<string> {
  if (path !== '-') {
    try {
      return await readFile(path, 'utf8')
    } catch (error) {
      throw new InputError(`cannot read ${path}: ${(error as NodeJS.ErrnoException).code ?? 'unreadable'}`)
    }
  }
  const chunks: Buffer[] = []
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks).toString('utf8')
}

/** JSON of a file or standard input; the error says where it stops being JSON. */
export async function readJson(path: string): Promise<unknown> {
  const text = await readText(path)
  try {
    return JSON.parse(text)
  } catch (error) {
    throw new InputError(`${path === '-' ? 'standard input' : path} is not JSON: ${(error as Error).message}`)
  }
}
