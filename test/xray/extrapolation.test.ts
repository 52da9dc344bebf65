import { describe, expect, it } from 'vitest'
import { assessXray } from '../../src/xray/assess.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { extrapolationOf } from '../../src/xray/extrapolation.ts'
import { sampleContaminant, samplePoint } from '../coil/sample-point.ts'
import { sampleMachine } from './places/sample-machine.ts'

const near = sampleMachine({ beam: 'down', sourceToDetectorMm: 450 })
const nuts = (filledMm: number) =>
  samplePoint(
    { heightMm: filledMm, filledMm },
    { food: 'almond', structure: 'granular', grainMm: 12, packing: 0.55, densityGPerCm3: 1.05 },
  )
const of = (point = nuts(50), machine = near) => extrapolationOf(point, buildOf(machine))

describe('far from where practice was read', () => {
  it('is nothing for nuts 10 to 100 mm deep in a machine of usual distance', () => {
    for (const depth of [10, 100]) expect(of(nuts(depth))).toEqual({ by: [], factor: 1 })
  })
  it('is another depth, another food, another machine, each by its factor', () => {
    expect(of(nuts(101))).toEqual({ by: ['depth'], factor: 1.15 })
    expect(of(nuts(9))).toEqual({ by: ['depth'], factor: 1.15 })
    expect(of(samplePoint())).toEqual({ by: ['food'], factor: 1.15 })
    expect(of(nuts(50), { ...near, sourceToDetectorMm: 601 })).toEqual({ by: ['machine'], factor: 1.1 })
    const all = of(samplePoint({ widthMm: 200 }), sampleMachine({ beam: 'side' }))
    expect(all.by).toEqual(['food', 'depth', 'machine'])
    expect(all.factor).toBeCloseTo(1.15 * 1.15 * 1.1, 9)
  })
})

describe('the best possible size', () => {
  const { findings } = assessXray({
    machine: near,
    point: samplePoint({ filledMm: 40 }),
    contaminants: ['glass_container', 'ss304'].map((material) => sampleContaminant(material)),
    prefix: 'p',
  })
  it('lies inside its range, and the range is no wider than depth and density make it', () => {
    for (const { bestMm, bestRangeMm } of findings) {
      const [low, high] = bestRangeMm!
      expect(low).toBeLessThan(bestMm!)
      expect(high).toBeGreaterThan(bestMm!)
      expect(high / low).toBeLessThan(1.3)
    }
  })
})
