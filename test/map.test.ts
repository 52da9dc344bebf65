import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../', import.meta.url))
const ROOMS = ['src', 'rules', 'views', 'test', '.ci']

/** Files and folders of the house as paths from its top; folders end with a stroke. */
const places = [
  ...readdirSync(root),
  ...ROOMS.flatMap((room) => [
    `${room}/`,
    ...readdirSync(`${root}${room}`, { recursive: true, withFileTypes: true }).map(
      (entry) => `${entry.parentPath.slice(root.length)}/${entry.name}${entry.isDirectory() ? '/' : ''}`,
    ),
  ]),
]

/** Paths a text names: words in code marks with a stroke in them (addresses begin with one), or that end like a file of code. */
const pathsIn = (text: string): string[] =>
  [...text.matchAll(/`([^`\s]+)`/g)]
    .map(([, path]) => path!)
    .filter((path) => /^[\w.-]+\/[\w./*-]*$|^[\w-]+\.tsx?$/.test(path) && !path.startsWith('@'))

const stands = (path: string): boolean => {
  const [start, end = ''] = path.split('*')
  return places.some((place) => {
    const at = place.startsWith(start!) ? 0 : place.indexOf(`/${start}`) + 1
    if (at === 0 && !place.startsWith(start!)) return false
    const rest = place.slice(at + start!.length)
    return path.includes('*') ? rest.endsWith(end) : rest === end || rest === '/'
  })
}

describe('the map of the house', () => {
  const named = pathsIn(readFileSync(`${root}DEVELOPERS.md`, 'utf8'))

  it('names only what stands', () => {
    expect(named.length).toBeGreaterThan(80)
    expect(named.filter((path) => !stands(path))).toEqual([])
  })

  it('would be found out if it did not', () => {
    expect(['src/advice/nowhere.ts', 'order/nothing.ts', 'no-such-room/'].filter(stands)).toEqual([])
  })

  it('no folder holds more than about twenty files', () => {
    const files = places.filter((place) => place.includes('/') && !place.endsWith('/'))
    const held = new Map<string, number>()
    for (const file of files) {
      const folder = file.slice(0, file.lastIndexOf('/'))
      held.set(folder, (held.get(folder) ?? 0) + 1)
    }
    expect([...held].filter(([, count]) => count > 22)).toEqual([])
  })
})
