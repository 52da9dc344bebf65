import { type Dirent, readdirSync } from 'node:fs'
import { basename, join } from 'node:path'
import { readFileWithin } from '../../intake/file-text.ts'

/** JSON files of one book, and folders in it. */
const MOST_FILES = 200

/** A book held in memory: its name, and the text of each of its files. */
export interface BookText {
  readonly name: string
  readonly files: Readonly<Record<string, string>>
}

/** The texts of a book's folder, its rules in folders of their own or not; what is wrong is added to `problems`. */
export function bookFolder(directory: string, problems: string[]): BookText {
  const name = basename(directory)
  const files = filesOf(directory)
  if (files === null || files.length > MOST_FILES) {
    const what = files === null ? 'no such folder, or not to be read' : `more than ${MOST_FILES} files`
    problems.push(
      `${directory}: ${what}; a rule book is a folder of JSON files (rules, thresholds.json, sources.json)`,
    )
    return { name, files: {} }
  }
  const texts: Record<string, string> = {}
  for (const file of files) {
    const read = readFileWithin(join(directory, file))
    if (read.ok) texts[file] = read.text
    else problems.push(`${file}: ${read.because}`)
  }
  return { name, files: texts }
}

const isJson = ({ name }: Dirent): boolean => name.endsWith('.json')

/** JSON files of a folder, and of the folders in it one storey down, as paths from it; null where there is none. */
function filesOf(directory: string): string[] | null {
  try {
    const entries = readdirSync(directory, { withFileTypes: true })
    const storeys = entries.filter(
      (entry) => entry.isDirectory() && !isJson(entry) && entry.name !== 'node_modules',
    )
    return [
      ...entries.filter(isJson).map(({ name }) => name),
      ...storeys.flatMap(({ name }) =>
        readdirSync(join(directory, name), { withFileTypes: true })
          .filter(isJson)
          .map((file) => `${name}/${file.name}`),
      ),
    ]
  } catch {
    return null
  }
}
