import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { materials } from '../../src/reference/index.ts'
import { captureDepthM } from '../../src/separation/magnet/magnet-capture.ts'
import { decayFromReach } from '../../src/separation/magnet/magnet-field.ts'
import {
  effectiveSusceptibility,
  fieldTesla,
  type Magnetism,
  pullNPerM3,
} from '../../src/separation/magnet/magnetic-pull.ts'
import { GRAVITY_M_PER_S2, MU0_T_M_PER_A } from '../../src/separation/physical-constants.ts'
import { assess, first, magnet } from './removal-case.ts'

const field = { surfaceTesla: 1, decayPerM: 170 }
const iron: Magnetism = { susceptibility: 1000, saturationTesla: 2 }
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('the pull of a magnet', () => {
  it('a ball answers as if its susceptibility were three, however permeable', () => {
    expect(effectiveSusceptibility(1e9, 1 / 3)).toBeCloseTo(3, 6)
    expect(effectiveSusceptibility(0.005, 1 / 3)).toBeCloseTo(0.005, 4)
  })

  it('is χ·B·∇B/μ0 in a weak field and Bs·∇B/μ0 in a strong one', () => {
    const far = 0.02
    const b = fieldTesla(field, far)
    const chi = effectiveSusceptibility(1000, 1 / 3)
    expect(pullNPerM3(field, far, iron, 1 / 3)).toBeCloseTo((chi * b * 170 * b) / MU0_T_M_PER_A, 6)
    expect(pullNPerM3(field, 0, iron, 1 / 3) / ((2 * 170 * 1) / MU0_T_M_PER_A)).toBeCloseTo(1, 12)
  })

  it('the reach is where a ball of mild steel is just carried', () => {
    const decayPerM = decayFromReach(1, 0.025)!
    const steel: Magnetism = { susceptibility: 99, saturationTesla: 2 }
    const weight = materials.get('steel')!.densityGPerCm3 * 1000 * GRAVITY_M_PER_S2
    expect(pullNPerM3({ surfaceTesla: 1, decayPerM }, 0.025, steel, 1 / 3) / weight).toBeCloseTo(1, 6)
    // The pole pitch this comes to, 15 to 25 mm, is what bars of rare-earth magnets have (common practice).
    expect((Math.PI / decayPerM) * 1000).toBeGreaterThan(15)
    expect((Math.PI / decayPerM) * 1000).toBeLessThan(25)
  })

  it('a reach that the flux density cannot do is called impossible', () => {
    expect(decayFromReach(0.05, 0.2)).toBeNull()
    const found = first({ machine: { id: 'm', family: 'magnet', surfaceTesla: 0.05, reachMm: 200 } })
    expect(found.condition).toContain('more than this flux density')
    expect(found.shareRemoved[0]).toBe(0)
  })

  it('a magnet too weak for steel says so, and does not blame the steel', () => {
    const found = first({ machine: { id: 'm', family: 'magnet', surfaceTesla: 0.02 } })
    expect(found.ceiling).toBe(0)
    expect(found.because).toContain('too weak')
  })
})

describe('what a magnet draws out of a layer', () => {
  const passing = {
    pullNPerM3: (z: number) => pullNPerM3(field, z, iron, 1 / 3),
    densityKgPerM3: 7850,
    diameterM: 0.002,
    layerM: 0.05,
    timeS: 0.02,
    lifts: true,
    resistancePa: 0,
    liquid: null,
  }

  it('does not depend on the size of the piece where only its weight holds it back', () => {
    fc.assert(
      fc.property(size(1e-4, 0.02), (diameterM) => {
        expect(captureDepthM({ ...passing, diameterM })).toBeCloseTo(captureDepthM(passing), 12)
      }),
    )
  })

  it('given time, draws from where the pull just beats what holds the piece back', () => {
    // Lifted: pull = ρ·g + 1.5·P/d, solved for z in the unsaturated field.
    const resistancePa = 800
    const against = 7850 * GRAVITY_M_PER_S2 + (1.5 * resistancePa) / passing.diameterM
    const chi = effectiveSusceptibility(1000, 1 / 3)
    const exact = Math.log((chi * 170) / (MU0_T_M_PER_A * against)) / (2 * 170)
    const depth = captureDepthM({ ...passing, timeS: 1e6, resistancePa })
    expect(depth).toBeCloseTo(exact, 6)
    expect(depth).toBeLessThan(captureDepthM({ ...passing, timeS: 1e6 }))
  })

  it('a longer time, a weaker resistance, a thinner liquid never draw from less deep', () => {
    fc.assert(
      fc.property(size(1, 5), size(0, 5000), size(1, 10), (factor, resistancePa, thicker) => {
        const base = captureDepthM(passing)
        expect(captureDepthM({ ...passing, timeS: passing.timeS * factor })).toBeGreaterThanOrEqual(base)
        expect(captureDepthM({ ...passing, resistancePa })).toBeLessThanOrEqual(base)
        const liquid = (viscosityPaS: number) => ({ densityKgPerM3: 1000, viscosityPaS })
        expect(captureDepthM({ ...passing, liquid: liquid(0.1 * thicker) })).toBeLessThanOrEqual(
          captureDepthM({ ...passing, liquid: liquid(0.1) }),
        )
      }),
    )
  })

  it('the way really takes no longer than the bound says', () => {
    const depth = captureDepthM({ ...passing, lifts: false })
    let z = depth
    let speed = 0
    let time = 0
    const dt = 1e-6
    while (z > 0 && time < 1) {
      speed += (passing.pullNPerM3(z) / passing.densityKgPerM3) * dt
      z -= speed * dt
      time += dt
    }
    expect(time).toBeLessThanOrEqual(passing.timeS)
    expect(time).toBeGreaterThan(passing.timeS / 4)
  })
})

describe('a magnet in the line', () => {
  const of = (material: string, point = {}) =>
    first({ machine: magnet, contaminants: [{ material, mustFindMm: 2 }], point })

  it.each(['ss316', 'brass', 'aluminium', 'copper', 'lead', 'quartz', 'glass_any', 'pe', 'bone_any', 'wood'])(
    'takes out no %s: an honest zero that no size lifts',
    (material) => {
      const found = of(material)
      expect(found.applicable).toBe(true)
      expect(found.shareRemoved).toEqual([0, 0])
      expect(found.ceiling).toBe(0)
    },
  )

  it.each(['steel', 'ss430', 'ferrite', 'carbide'])('takes out %s from a thin layer', (material) => {
    const { shareRemoved } = of(material, { heightMm: 15 })
    expect(shareRemoved[0]).toBeGreaterThan(0)
    expect(shareRemoved[1]).toBeGreaterThan(0.6)
  })

  it('may take out 304, when it was cold-worked, and promises none', () => {
    const { shareRemoved, because } = of('ss304')
    expect(shareRemoved[0]).toBe(0)
    expect(shareRemoved[1]).toBeGreaterThan(0)
    expect(because).toContain('cold-worked')
  })

  it('stainless of unknown grade runs from none to what grade 430 would give', () => {
    const any = of('stainless_any').shareRemoved
    expect(any[0]).toBe(0)
    expect(any[1]).toBeGreaterThanOrEqual(of('ss430').shareRemoved[1])
  })

  it('never gains from a deeper layer or a faster flow', () => {
    const stage = fc.constantFrom('loose' as const, 'free-fall' as const, 'pumped' as const)
    const material = fc.constantFrom('steel', 'ss304', 'ferrite', 'carbide')
    const food = fc.constantFrom('hazelnut', 'flour', 'honey', 'beef_mince')
    fc.assert(
      fc.property(
        stage,
        material,
        food,
        size(26, 120),
        size(2, 190),
        size(1.05, 3),
        (at, id, foodId, depth, speed, factor) => {
          if (at === 'loose' && foodId === 'beef_mince') return
          const share = (heightMm: number, speedMPerMin: number) =>
            first({
              machine: magnet,
              product: { food: foodId },
              contaminants: [{ material: id, mustFindMm: 2 }],
              point: { stage: at, heightMm, widthMm: 600, speedMPerMin },
            }).shareRemoved
          const base = share(depth, speed)
          for (const worse of [share(depth * factor, speed), share(depth, speed * factor)]) {
            expect(worse[0]).toBeLessThanOrEqual(base[0])
            expect(worse[1]).toBeLessThanOrEqual(base[1])
          }
        },
      ),
      { numRuns: 120, seed: 11 },
    )
  })

  it('the bed resists with one to ten times its own weight on the section of the piece', () => {
    const { calculations, findings } = assess({ machine: magnet, point: { heightMm: 60 } })
    const pressure = calculations.find((step) => step.id === 'p0.test.bed-resistance')!
    // Hazelnuts: 1.045 g/cm³ at packing 0.57, 60 mm deep: 350 Pa.
    const weight = 1045 * 0.57 * GRAVITY_M_PER_S2 * 0.06
    const [least, most] = String(pressure.value).split(' to ').map(Number)
    expect(least! / weight).toBeCloseTo(1, 3)
    expect(most! / weight).toBeCloseTo(10, 3)
    const lighter = first({
      machine: magnet,
      product: { food: 'hazelnut', packing: 0.3 },
      point: { heightMm: 60 },
    })
    expect(lighter.shareRemoved[0]).toBeGreaterThan(findings[0]!.shareRemoved[0])
    expect(lighter.shareRemoved[1]).toBeGreaterThan(findings[0]!.shareRemoved[1])
  })

  it('in a stiff paste a larger piece moves more easily, and a thin liquid lets go of more', () => {
    const at = (food: string, mustFindMm: number) =>
      first({
        machine: magnet,
        product: { food },
        contaminants: [{ material: 'steel', mustFindMm }],
        point: { stage: 'pumped', heightMm: 76, widthMm: 76, lengthMm: 76, speedMPerMin: 10 },
      }).shareRemoved
    expect(at('beef_mince', 4)[1]).toBeGreaterThan(at('beef_mince', 1)[1])
    expect(at('tomato_sauce', 1)[1]).toBeGreaterThan(at('beef_mince', 1)[1])
  })

  it('never loses from a stronger surface at the same pole pitch', () => {
    const at = (surfaceTesla: number) =>
      first({ machine: { id: 'm', family: 'magnet', surfaceTesla }, point: { heightMm: 60 } }).shareRemoved
    expect(at(1.2)[1]).toBeGreaterThan(at(0.6)[1])
    expect(at(0.6)[1]).toBeGreaterThan(at(0.2)[1])
  })

  it('collects the iron of a fortified product, and says how much', () => {
    const found = first({
      machine: magnet,
      product: { food: 'flour', ironMgPerKg: 80 },
      point: { stage: 'free-fall', heightMm: 100, widthMm: 100, lengthMm: 100, pipeDiameterMm: 100 },
    })
    expect(found.condition).toContain('160 g an hour')
    expect(found.goodProductLost![0]).toBe(0)
    expect(found.goodProductLost![1]).toBeCloseTo(80e-6, 12)
    expect(found.goodProductLostUnit).toBe('share of the product')
  })

  it('does not reach into a firm piece of food, nor into a pack', () => {
    expect(assess({ machine: magnet, product: { food: 'cheddar' } }).applicable).toBe(false)
    expect(assess({ machine: magnet, point: { stage: 'packed' } }).applicable).toBe(false)
  })
})
