import { describe, expect, it } from 'vitest'
import { machineSchema } from '../../src/contract/index.ts'
import { archetypes, sources } from '../../src/reference/index.ts'

const all = [...archetypes.values()]

describe('archetypes', () => {
  it('cover every class a stage may choose from', () => {
    expect([...archetypes.keys()]).toEqual([
      ...['xray-single', 'xray-dual', 'xray-dual-fine', 'xray-side', 'xray-side-two-views', 'xray-counting'],
      ...['coil-single', 'coil-multi', 'coil-free-fall', 'coil-pipe', 'static-field'],
      ...['optical-sorter', 'magnet', 'sieve', 'density-separator'],
    ])
    for (const stage of ['loose', 'pumped', 'free-fall', 'packed'] as const)
      expect(
        all.some((a) => a.ranked && a.stages.includes(stage)),
        stage,
      ).toBe(true)
  })

  it.each(all)('$id is a machine of the contract and says what stands behind its figures', (archetype) => {
    const { stages, ranked: _ranked, basis, sources: cited, mark: _mark, ...machine } = archetype
    expect(machineSchema.safeParse(machine).error?.issues ?? []).toEqual([])
    expect(stages.length).toBeGreaterThan(0)
    expect(basis.length).toBeGreaterThan(20)
    for (const id of cited) expect(sources.has(id), id).toBe(true)
  })

  it('ranks everything but the ideal counting detector', () => {
    expect(all.filter((a) => !a.ranked).map((a) => a.id)).toEqual(['xray-counting'])
  })

  it('leaves the opening of a coil to the line', () => {
    for (const a of all.filter((x) => x.family === 'coil')) {
      expect(a).not.toHaveProperty('apertureHeightMm')
      expect(a).not.toHaveProperty('apertureWidthMm')
    }
  })
})
