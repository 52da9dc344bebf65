import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { stableJson } from '../../src/reference/build/stable-json.ts'
import { buildReference } from '../../src/reference/build.ts'

const data = new URL('../../src/reference/data/', import.meta.url)

describe('built reference data', () => {
  const built = buildReference()

  it('is exactly what the raw files give', () => {
    for (const [name, text] of Object.entries(built))
      expect(readFileSync(new URL(name, data), 'utf8') === text, `${name}: run npm run reference`).toBe(true)
  })

  it('holds no file the build does not make', () => {
    expect(readdirSync(data).sort()).toEqual(Object.keys(built).sort())
  })

  it('reads the same whatever the order of keys', () => {
    expect(stableJson({ b: [1, { y: 2, x: 1 }], a: null }, 1)).toBe(
      stableJson({ a: null, b: [1, { x: 1, y: 2 }] }, 1),
    )
    expect(stableJson({ b: 1, a: [1, 2] }, 1)).toBe('{\n "a": [1, 2],\n "b": 1\n}\n')
  })
})
