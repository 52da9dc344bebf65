import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { assessXray } from '../../src/xray/assess.ts'
import { doseOf } from '../../src/xray/beam/dose.ts'
import { buildOf, type XrayBuild } from '../../src/xray/beam/exposure.ts'
import { AIR } from '../../src/xray/beam/filters.ts'
import { briefOf } from './arbitrary.ts'

const water = { H: 0.111894, O: 0.888106 }
const machine: XrayMachine = {
  id: 'one',
  family: 'xray',
  kV: 70,
  mA: 5,
  pixelMm: 0.8,
  sourceToDetectorMm: 500,
  magnification: 1.25,
  beamWidthMm: 2,
  detectorLayers: [
    { scintillator: 'gos', mgPerCm2: 110, swank: 0.8, electronsPerKeV: 20, noiseElectrons: 1500 },
  ],
}
const build = buildOf(machine)
const setting = { kV: 70, mA: 5 }
const dose = (more: Partial<XrayBuild> = {}, mA = 5, speed = 30) =>
  doseOf({ ...build, ...more }, { ...setting, mA }, speed, water).doseMicroGy

describe('the dose of one pass', () => {
  it('is kerma per mAs, distance, current and time in the beam multiplied', () => {
    const one = doseOf(build, setting, 30, water)
    expect(one.foodDistanceMm).toBe(400)
    expect(one.inBeamS).toBeCloseTo(2 / 500, 12)
    expect(one.kermaMicroGy).toBeCloseTo(one.kermaPerMasMicroGy * 6.25 * 5 * 0.004, 9)
    expect(one.doseMicroGy).toBeCloseTo(one.kermaMicroGy * one.foodOverAir, 9)
    expect(one.rangeMicroGy[0]).toBeCloseTo(0.75 * one.doseMicroGy, 9)
    expect(one.rangeMicroGy[1]).toBeCloseTo(1.25 * one.doseMicroGy, 9)
  })

  it('grows with current, beam width and views, and falls with speed, each in proportion', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 8, noNaN: true }), (factor) => {
        expect(dose({}, 5 * factor)).toBeCloseTo(factor * dose(), 8)
        expect(dose({ beamWidthMm: 2 * factor })).toBeCloseTo(factor * dose(), 8)
        expect(dose({}, 5, 30 * factor)).toBeCloseTo(dose() / factor, 8)
      }),
      { numRuns: 30, seed: 3 },
    )
    expect(dose({ views: 2 })).toBeCloseTo(2 * dose(), 9)
  })

  it('falls by the square of the distance, and a little more for the air between', () => {
    const near = doseOf({ ...build, sourceToDetectorMm: 500 }, setting, 30, water)
    const far = doseOf({ ...build, sourceToDetectorMm: 1000 }, setting, 30, water)
    const ratio = near.kermaMicroGy / far.kermaMicroGy
    expect(ratio).toBeGreaterThan(4)
    expect(ratio).toBeLessThan(4.2)
  })

  it('in air is the air kerma; a salty food takes more than water, a fatty one less', () => {
    const over = (food: Record<string, number>) => doseOf(build, setting, 30, food).foodOverAir
    expect(over(AIR)).toBeCloseTo(1, 12)
    const fat = { H: 0.118, C: 0.773, O: 0.109 }
    const brine = { H: 0.1007, O: 0.7993, Na: 0.0393, Cl: 0.0607 }
    expect(over(fat)).toBeLessThan(over(water))
    expect(over(brine)).toBeGreaterThan(over(water))
  })

  it('stands in the assessment, and its trail leads to the tube, the distance and the belt', () => {
    const parsed = parseBrief(
      briefOf({
        food: 'cheddar',
        heightMm: 40,
        speedMPerMin: 20,
        pixelMm: 0.8,
        kV: 70,
        layers: [
          { scintillator: 'gos', swank: 0.8, electronsPerKeV: 20, noiseElectrons: 1500, mgPerCm2: 110 },
        ],
        material: 'quartz',
        shape: 'sphere',
        placement: 'inside',
      }),
    )
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const assessment = assessXray({
      machine: parsed.brief.equipment[0] as XrayMachine,
      point: parsed.brief.points[0]!,
      contaminants: parsed.brief.contaminants,
      prefix: 'p0.m',
    })
    const byId = new Map(assessment.calculations.map((one) => [one.id, one]))
    const reached = new Set<string>()
    const walk = (id: string) => {
      const step = byId.get(id)
      expect(step, id).toBeDefined()
      reached.add(id)
      step?.inputs.forEach(walk)
    }
    walk('p0.m.dose')
    for (const name of ['kV', 'mA', 'food-distance', 'beam-width', 'belt-speed', 'magnification'])
      expect(reached).toContain(`p0.m.${name}`)
    expect(byId.get('p0.m.dose')!.value).toBeCloseTo(assessment.dose!.doseMicroGy, 2)
  })
})
