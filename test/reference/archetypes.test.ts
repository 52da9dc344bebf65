import { describe, expect, it } from 'vitest'
import { machineSchema } from '../../src/contract/index.ts'
import { archetypes, figuresOf, sources } from '../../src/reference/index.ts'

const all = [...archetypes.values()]

describe('archetypes', () => {
  it('cover every class a stage may choose from', () => {
    expect([...archetypes.keys()]).toEqual([
      ...['xray-single', 'xray-dual', 'xray-dual-fine', 'xray-side', 'xray-side-two-views', 'xray-pipe'],
      ...['xray-counting'],
      ...['coil-single', 'coil-multi', 'coil-free-fall', 'coil-free-fall-multi', 'coil-pipe'],
      ...['coil-pipe-multi', 'static-field'],
      ...['optical-sorter', 'magnet', 'sieve', 'density-separator'],
    ])
    for (const stage of ['loose', 'pumped', 'free-fall', 'packed'] as const)
      expect(
        all.some((a) => a.ranked && a.stages.includes(stage)),
        stage,
      ).toBe(true)
  })

  it.each(all)('$id is a machine of the contract and says what stands behind its figures', (archetype) => {
    const { stages, basis, sources: cited } = archetype
    expect(machineSchema.safeParse(figuresOf(archetype)).error?.issues ?? []).toEqual([])
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

  const built = all.flatMap((a) =>
    a.family === 'xray' ? (a.builds ?? []).map((build) => ({ a, build })) : [],
  )
  it.each(built)('$a.id, $build.build: a machine whose fan opens to 35 degrees at most', ({ a, build }) => {
    const machine = machineSchema.parse(figuresOf(a, build))
    if (machine.family !== 'xray') throw new Error('an x-ray machine was expected')
    const reachMm = machine.sourceToDetectorMm! / machine.magnification!
    const opens = (180 / Math.PI) * Math.atan(machine.maxWidthMm! / 2 / reachMm)
    expect(opens).toBeLessThanOrEqual(35)
    expect(machine).toMatchObject({ id: a.id, build: build.build })
  })
  it('names a build behind the technology, but for the smallest', () => {
    const dual = archetypes.get('xray-dual')!
    if (dual.family !== 'xray') throw new Error('an x-ray machine was expected')
    expect(dual.builds!.map((build) => figuresOf(dual, build).label)).toEqual([
      dual.label,
      `${dual.label}, wide belt`,
      `${dual.label}, for cases and blocks`,
      `${dual.label}, bulk belt`,
    ])
  })
})
