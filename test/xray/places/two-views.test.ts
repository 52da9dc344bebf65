import { describe, expect, it } from 'vitest'
import type { Part } from '../../../src/contract/index.ts'
import { assessXray } from '../../../src/xray/assess.ts'
import { sampleContaminant, samplePoint } from '../../coil/sample-point.ts'
import { sampleMachine } from './sample-machine.ts'

const parts: Part[] = [
  { material: 'glass_container', mm: 2.5, place: 'wall', unevennessMm: 0.3 },
  { material: 'glass_container', mm: 4, place: 'base', unevennessMm: 0.3 },
  { material: 'steel', mm: 0.17, place: 'closure' },
]
const jar = (stiff: boolean) =>
  samplePoint(
    { heightMm: 95, filledMm: 95, widthMm: 68, lengthMm: 68, outline: 'cylinder', parts },
    { food: 'tomato_sauce', densityGPerCm3: 1.04, structure: 'liquid', unevennessMm: 0.25, stiff },
  )
const contaminants = ['glass_container', 'ss304'].map((material) =>
  sampleContaminant(material, { mustFindMm: 3 }),
)
const findings = (views: number, stiff: boolean) =>
  assessXray({ machine: sampleMachine({ views, tiltDeg: 20 }), point: jar(stiff), contaminants, prefix: 'p' })
    .findings

/** What the search for a size leaves open. */
const SAME = 1 + 1e-4

describe('two views, the second tilted', () => {
  it('are never worse than one, at any place and in any size', () => {
    findings(1, true).forEach((one, c) => {
      const two = findings(2, true)[c]!
      expect(two.bestMm!).toBeLessThanOrEqual(one.bestMm! * SAME)
      expect(two.expectedMm!).toBeLessThanOrEqual(one.expectedMm! * SAME)
      expect(two.cautiousMm!).toBeLessThanOrEqual(one.cautiousMm! * SAME)
      one.zones.forEach((zone, i) => {
        const there = two.zones[i]!
        expect(there.name).toBe(zone.name)
        expect(there.sizes.expectedMm ?? 99).toBeLessThanOrEqual((zone.sizes.expectedMm ?? 99) * SAME)
      })
    })
  })
  it('see what sinks to the base, which one level view does not', () => {
    findings(1, false).forEach((one, c) => {
      const two = findings(2, false)[c]!
      expect(one).toMatchObject({ place: 'base', settling: 'sinks', bestMm: null, chanceAtMustFind: 0 })
      expect(two.place).toBe('base')
      expect(two.expectedMm).not.toBeNull()
      const base = two.zones.find(({ name }) => name === 'base')!
      expect(base).toMatchObject({ canLieThere: true, settlesThere: true })
      expect(base.sizes.expectedMm).toBe(two.expectedMm)
      expect(two.zones.find(({ name }) => name === 'body')!.canLieThere).toBe(false)
    })
  })
  it('give the worst of base and heel as the size of what sinks', () => {
    for (const { expectedMm, zones } of findings(2, false)) {
      const settled = zones.filter(({ settlesThere }) => settlesThere)
      expect(settled.map(({ name }) => name)).toEqual(['heel', 'base'])
      expect(expectedMm).toBe(Math.max(...settled.map(({ sizes }) => sizes.expectedMm!)))
    }
  })
})
