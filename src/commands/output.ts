import { mkdir, rename, rm, stat, writeFile } from 'node:fs/promises'
import { dirname, join, resolve } from 'node:path'
import { fileTrouble } from '../intake/file-text.ts'

/** The input was good and the work could not be done all the same: shown on standard error, exit code 1. */
export class Trouble extends Error {}

const WORDS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk is full',
  EPIPE: 'nobody reads it any more',
  EROFS: 'nothing can be written there',
  ENOENT: 'there is no such folder, or none can be made there',
  ENOTDIR: 'a file stands in the way',
  ENAMETOOLONG: 'a name in it is too long',
}

/** Why something could not be written, in words. */
export const writeTrouble = (error: unknown): string =>
  WORDS[(error as NodeJS.ErrnoException).code ?? ''] ?? fileTrouble(error)

/** A folder and those above it. Step by step: mkdir with `recursive` never ends where a folder takes no new ones. */
async function makeFolder(folder: string): Promise<void> {
  const missing: string[] = []
  for (let at = resolve(folder); !(await isThere(at)); at = dirname(at)) missing.unshift(at)
  for (const one of missing)
    await mkdir(one).catch((error) => {
      if (error.code !== 'EEXIST') throw error
    })
}

async function isThere(path: string): Promise<boolean> {
  try {
    await stat(path)
    return true
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false
    throw error
  }
}

/**
 * Writes files into a folder, all or none: each under a passing name first, and under its own when every one is
 * there. Names are single names made by fileName, never paths.
 */
export async function writeFiles(
  folder: string,
  files: readonly { readonly name: string; readonly content: string | Uint8Array }[],
): Promise<void> {
  const passing = (name: string) => join(folder, `${name}.part`)
  try {
    await makeFolder(folder)
    for (const { name, content } of files) await writeFile(passing(name), content)
    for (const { name } of files) await rename(passing(name), join(folder, name))
  } catch (error) {
    await Promise.all(files.map(({ name }) => rm(passing(name), { force: true }).catch(() => {})))
    throw new Trouble(`cannot write into ${folder}: ${writeTrouble(error)}`)
  }
}
