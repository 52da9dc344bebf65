import { parseBrief } from '../brief/index.ts'
import type { Brief } from '../contract/index.ts'
import { InputError, readJson } from './input.ts'

/** The brief of a file (or "-"); an InputError lists every problem with its field. */
export async function loadBrief(path: string): Promise<Brief> {
  const parsed = parseBrief(await readJson(path))
  if (parsed.ok) return parsed.brief
  const lines = parsed.problems.map(({ path: field, message }) => `  ${field || 'brief'}: ${message}`)
  throw new InputError(
    `the brief has ${lines.length} problem${lines.length === 1 ? '' : 's'}:\n${lines.join('\n')}`,
  )
}
