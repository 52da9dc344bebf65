import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readForm } from '../../src/brief/form/form.ts'
import { writeForm } from '../../src/brief/form/form-writing.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { BriefInput } from '../../src/contract/index.ts'
import { materials, ownMaterialId, readElements } from '../../src/reference/index.ts'
import { materialAttenuation } from '../../src/xray/places/pack-in-beam.ts'

const brief = (own: Partial<BriefInput['contaminants'][number]>): BriefInput => ({
  product: { food: 'cheddar' },
  points: [{ name: 'end', heightMm: 40, widthMm: 100, lengthMm: 150, speedMPerMin: 20 }],
  contaminants: [{ material: 'custom', mustFindMm: 3, ...own }],
})
const brick = {
  ownName: 'kiln brick',
  kind: 'stone',
  densityGPerCm3: 2.1,
  elements: 'O 49, Si 33, Al 18',
} as const

describe('a contaminant of a person’s own', () => {
  it('is looked through by its elements and density', () => {
    const parsed = parseBrief(brief(brick))
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const { material } = parsed.brief.contaminants[0]!
    expect(materials.get(material)).toMatchObject({ label: 'kiln brick', kind: 'stone', densityGPerCm3: 2.1 })
    // Quartz described by hand attenuates like the listed one.
    const quartz = materials.get('quartz')!
    const same = ownMaterialId({
      name: 'by hand',
      kind: 'stone',
      densityGPerCm3: quartz.densityGPerCm3,
      massFractions: readElements('O 53.26, Si 46.74'),
    })
    const [listed, described] = [materialAttenuation('quartz'), materialAttenuation(same)]
    for (const bin of [20, 50, 90]) expect(described[bin]! / listed[bin]!).toBeCloseTo(1, 3)
  })

  it.each([
    [{ ...brick, elements: undefined }, 'contaminants.0.elements', /needs its elements/],
    [{ ...brick, kind: undefined }, 'contaminants.0.kind', /glass, stone, bone, polymer or organic/],
    [{ ...brick, densityGPerCm3: undefined }, 'contaminants.0.densityGPerCm3', /needs its density/],
    [{ ...brick, elements: 'O 49, Si 33' }, 'contaminants.0.elements', /add up to 100 %.*82 % was given/],
    [{ ...brick, elements: 'O 49, Qq 51' }, 'contaminants.0.elements', /Qq is not the symbol/],
    [{ ...brick, elements: 'sand' }, 'contaminants.0.elements', /sand was given/],
    [{ material: 'quartz', kind: 'stone' }, 'contaminants.0.kind', /belongs to the material "custom"/],
  ])('says what is wrong with %j', (own, path, message) => {
    const parsed = parseBrief(JSON.parse(JSON.stringify(brief(own as never))))
    expect(parsed.ok).toBe(false)
    if (!parsed.ok) expect(parsed.problems).toContainEqual({ path, message: expect.stringMatching(message) })
  })

  it('may hold a trace too small to count', () => {
    const parsed = parseBrief(brief({ ...brick, elements: 'O 53, Si 46.9999999, H 0.0000001' }))
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const { massFractions } = materials.get(parsed.brief.contaminants[0]!.material)!
    expect(massFractions.O).toBeCloseTo(0.53, 5)
    expect(massFractions.H).toBeCloseTo(0, 6)
  })

  it('goes through the form and back', () => {
    const input = brief(brick)
    expect(readForm(writeForm(input)).input).toEqual(input)
  })

  it('has one id for one description, and an id that describes nothing is no material', () => {
    fc.assert(
      fc.property(fc.string(), fc.double({ min: 0.1, max: 20, noNaN: true }), (name, density) => {
        const own = {
          name,
          kind: 'glass',
          densityGPerCm3: density,
          massFractions: { O: 0.6, Si: 0.4 },
        } as const
        expect(materials.get(ownMaterialId(own))?.densityGPerCm3).toBe(density)
      }),
    )
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect([undefined, 'stone']).toContain(materials.get(`own:stone:2:${text}`)?.kind)
      }),
    )
    expect(materials.has('own:metal:7:Fe100:x')).toBe(false)
  })
})
