import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const folder = new URL('../../src/web/assets/', import.meta.url)
const sheets = readdirSync(folder).filter((name) => name.endsWith('.css'))
const styles = sheets.map((name) => readFileSync(new URL(name, folder), 'utf8')).join('\n')

/** What stands inside a media query, braces counted. */
function inside(css: string, query: string): string {
  const start = css.indexOf('{', css.indexOf(query)) + 1
  let depth = 1
  let end = start
  while (depth > 0) depth += { '{': 1, '}': -1 }[css[end++]!] ?? 0
  return css.slice(start, end - 1)
}

describe('the dark scheme', () => {
  it('changes values of variables and nothing else, so that layout and structure are looked at once', () => {
    expect(styles.split('prefers-color-scheme').length - 1).toBe(1)
    const declarations = inside(styles, '(prefers-color-scheme: dark)').match(/[\w-]+(?=\s*:[^{}]*;)/g)
    expect(declarations?.length).toBeGreaterThan(5)
    expect(declarations?.filter((name) => !name.startsWith('--'))).toEqual([])
  })
})
