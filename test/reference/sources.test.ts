import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { rawJson } from '../../src/reference/build/raw-files.ts'
import { archetypes, materials, referenceVersion, sources } from '../../src/reference/index.ts'

const built = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../src/reference/data/${name}`, import.meta.url), 'utf8'))

describe('sources', () => {
  it('carry a text and a mark', () => {
    for (const { id, text, mark } of sources.values()) {
      expect(text.length, id).toBeGreaterThan(30)
      expect(['V', 'V2', 'C', 'M', 'A'], id).toContain(mark)
    }
  })

  it('stand behind every table, and none stands idle', () => {
    const recipe = rawJson<{ nutrientSource: string; densitySource: string }>('nutrient-recipe.json')
    const cited = [
      built('attenuation.json').source,
      built('bremsstrahlung.json').source,
      built('bremsstrahlung.json').kLinesSource,
      built('granular-texture.json').source,
      ...[...materials.values()].map((m) => m.source),
      ...[...archetypes.values()].flatMap((a) => a.sources),
      recipe.nutrientSource,
      recipe.densitySource,
      rawJson<{ source: string }>('atomic-weights.json').source,
      ...built('dose-ceilings.json').rows.map((row: { source: string }) => row.source),
      built('dose-ceilings.json').statement.source,
      ...built('inserts.json').rows.map((row: { source: string }) => row.source),
      built('practice-range.json').source,
      'unevenness-judgement',
      'lugannani-rice',
      'clean-bed-simulation',
      'entered-with-the-brief',
      'nist-srd-126',
    ]
    expect(cited.filter((id) => !sources.has(id))).toEqual([])
    expect([...sources.keys()].filter((id) => !cited.includes(id))).toEqual([])
  })

  it('come with a version of the whole room', () => {
    expect(referenceVersion).toMatch(/^[0-9a-f]{12}$/)
  })
})
