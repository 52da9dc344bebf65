import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { vi } from 'vitest'

const folder = mkdtempSync(join(tmpdir(), 'command-'))

/** A file in the folder of the commands. */
export function file(name: string, content: unknown): string {
  const path = join(folder, name)
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content))
  return path
}

export const here = folder

/** What a command writes to standard output, and its exit code; errors are thrown on. */
export async function run(command: (args: string[]) => Promise<number>, ...args: string[]) {
  let out = ''
  const write = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += String(text)
    return true
  })
  try {
    return { code: await command(args), out }
  } finally {
    write.mockRestore()
  }
}
