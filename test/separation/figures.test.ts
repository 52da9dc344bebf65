import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { metals } from '../../src/reference/electrical.ts'
import { materials } from '../../src/reference/index.ts'
import {
  colours,
  FIGURES,
  figures,
  fluids,
  foodColours,
  foreignColours,
  grainShapes,
  saturations,
  separationSources,
  sieveOpeningsMm,
  similarColours,
} from '../../src/reference/separation.ts'

describe('figures of upstream removal', () => {
  it('are all there, and no others', () => {
    expect(Object.keys(figures).sort()).toEqual([...FIGURES].sort())
  })

  it.each(FIGURES)('%s lies inside its range and names a known source', (id) => {
    const { label, value, range, source, mark } = figures[id]
    expect(label.length).toBeGreaterThan(5)
    expect(range[0]).toBeLessThanOrEqual(value)
    expect(value).toBeLessThanOrEqual(range[1])
    expect(separationSources.has(source), source).toBe(true)
    expect(['V', 'V2', 'C', 'M', 'A']).toContain(mark)
  })

  it('no source stands idle', () => {
    const data = [
      ...FIGURES.map((id) => figures[id].source),
      ...[...saturations.values()].map((row) => row.source),
      ...Object.values(fluids).map((fluid) => fluid.source),
      sieveOpeningsMm.source,
    ]
    const room = new URL('../../src/separation/', import.meta.url)
    const code = readdirSync(room, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => readFileSync(new URL(name, room), 'utf8'))
      .join('\n')
    for (const id of separationSources.keys())
      expect(data.includes(id) || code.includes(`'${id}'`), id).toBe(true)
  })

  it('openings rise', () => {
    const { mm } = sieveOpeningsMm
    for (let i = 1; i < mm.length; i++) expect(mm[i]!).toBeGreaterThan(mm[i - 1]!)
  })

  it('every ferromagnetic metal has a saturation, and nothing else has', () => {
    const ferromagnetic = [...metals.values()].filter((m) => m.magnetism === 'ferromagnetic')
    expect([...saturations.keys()].sort()).toEqual(ferromagnetic.map((m) => m.id).sort())
  })
})

describe('colours', () => {
  it('are stated for every food and every material one may find', () => {
    const stated = [...materials.values()].filter((m) => m.kind !== 'gas' && m.id !== 'water')
    for (const { id, kind } of stated)
      expect((kind === 'food' ? foodColours : foreignColours).has(id), id).toBe(true)
  })

  it('and every granular food has a grain shape', () => {
    for (const { id, food } of materials.values())
      expect(grainShapes.has(id), id).toBe(food?.structure === 'granular')
  })

  it('use only the listed words', () => {
    for (const words of [...foodColours.values(), ...similarColours])
      for (const word of words) expect(colours.has(word), word).toBe(true)
    for (const words of foreignColours.values())
      for (const word of words) expect(word === 'any' || colours.has(word), word).toBe(true)
  })
})
