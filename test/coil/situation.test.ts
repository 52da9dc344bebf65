import { describe, expect, test } from 'vitest'
import { fittingOpening } from '../../src/coil/opening/opening.ts'
import { fallSpeedMPerS, squareOfStreamMm, streamAreaMm2 } from '../../src/coil/opening/stream.ts'
import { torsionConstantM4 } from '../../src/coil/piece/torsion.ts'
import { situationOf } from '../../src/coil/situation.ts'
import type { CoilMachine } from '../../src/contract/index.ts'
import { samplePoint } from './sample-point.ts'

const machine = (changes: Partial<CoilMachine> = {}): CoilMachine => ({
  id: 'coil',
  family: 'coil',
  frequenciesKHz: [300],
  ...changes,
})

const NO_OPENING = { apertureHeightMm: null, apertureWidthMm: null }

describe('opening', () => {
  test('the machine’s goes before the point’s, the point’s before one chosen for the pack', () => {
    const given = machine({ apertureHeightMm: 250, apertureWidthMm: 400 })
    expect(situationOf(given, samplePoint()).opening).toEqual({
      heightMm: 250,
      widthMm: 400,
      origin: 'machine',
    })
    expect(situationOf(machine(), samplePoint()).opening.origin).toBe('point')
    const chosen = situationOf(machine(), samplePoint(NO_OPENING)).opening
    expect(chosen.origin).toBe('pack')
    expect(chosen.heightMm).toBeGreaterThan(40)
    expect(chosen.widthMm).toBeGreaterThan(100)
  })

  test('the chosen one grows with the pack and the lanes, in steps of 25 mm', () => {
    const small = fittingOpening({ heightMm: 30, widthMm: 80, lanes: 1 })
    const large = fittingOpening({ heightMm: 120, widthMm: 180, lanes: 2 })
    expect(small).toMatchObject({ heightMm: 75, widthMm: 150 })
    expect(large).toMatchObject({ heightMm: 175, widthMm: 475 })
  })

  test('a pipe coil goes around the pipe; a throat is chosen so that the stream fills it loosely', () => {
    const pipe = situationOf(
      machine(),
      samplePoint({ ...NO_OPENING, stage: 'pumped', pipeDiameterMm: 80, kgPerHour: 3000 }),
    )
    expect(pipe.arrangement).toBe('pipe')
    expect(pipe.opening).toMatchObject({ heightMm: 100, widthMm: 100, origin: 'pipe' })
    expect(pipe.limitMm).toBe(12)
    const fall = situationOf(
      machine(),
      samplePoint({ ...NO_OPENING, stage: 'free-fall', fallHeightMm: 800, kgPerHour: 40_000 }),
    )
    expect(fall.arrangement).toBe('free-fall')
    expect(fall.opening.origin).toBe('flow')
    expect(fall.filling.areaShare).toBeLessThanOrEqual(0.3)
  })

  test('a pack larger than the opening is refused with the figures', () => {
    const refused = situationOf(machine(), samplePoint({ heightMm: 200, lanes: 4 }))
    expect(refused.refusals).toEqual([
      { id: 'too-high', given: 200, allowed: 175, unit: 'mm' },
      { id: 'too-wide', given: 400, allowed: 350, unit: 'mm' },
    ])
    expect(situationOf(machine({ maxHeightMm: 30 }), samplePoint()).refusals).toEqual([
      { id: 'too-high', given: 40, allowed: 30, unit: 'mm' },
    ])
    expect(situationOf(machine(), samplePoint()).refusals).toEqual([])
  })

  test('a stream that cannot pass the throat is refused; in a pipe it only means a full pipe', () => {
    const flood = { kgPerHour: 400_000, apertureHeightMm: 100, apertureWidthMm: 100, fallHeightMm: 500 }
    const fall = situationOf(machine(), samplePoint({ ...flood, stage: 'free-fall' }))
    expect(fall.refusals.map(({ id }) => id)).toEqual(['over-full'])
    const pipe = situationOf(machine(), samplePoint({ ...flood, stage: 'pumped', pipeDiameterMm: 80 }))
    expect(pipe.refusals).toEqual([])
    expect(pipe.filling.areaShare).toBe(1)
  })
})

describe('filling', () => {
  test('free fall: speed from the height, section from throughput, density and speed', () => {
    expect(fallSpeedMPerS(800)).toBeCloseTo(3.961, 3)
    // 3600 kg/h of 1 g/cm³ is 1 litre a second: at 1 m/s 1000 mm²
    expect(streamAreaMm2(3600, 1, 1)).toBeCloseTo(1000, 9)
  })

  test('the square bar of a round stream loops the same current, A²/2π', () => {
    const side = squareOfStreamMm(1000) / 1000
    expect(torsionConstantM4(side, side) / (1e-6 / (2 * Math.PI))).toBeCloseTo(1, 2)
  })

  test('half the throughput is half the section; without throughput the section is full', () => {
    const share = (kgPerHour: number | null) =>
      situationOf(machine(), samplePoint({ stage: 'pumped', pipeDiameterMm: 80, kgPerHour })).filling
    expect(share(1500).areaShare * 2).toBeCloseTo(share(3000).areaShare, 12)
    expect(share(null)).toMatchObject({ areaShare: 1, basis: 'full, throughput not known' })
  })

  test('a standing cylinder counts with its area, π/4 of the box', () => {
    const block = (outline: 'box' | 'cylinder') =>
      situationOf(machine(), samplePoint({ outline })).sceneAt(0.5, 'central').block!
    const box = block('box')
    const can = block('cylinder')
    expect((can.widthM * can.lengthM) / (box.widthM * box.lengthM)).toBeCloseTo(Math.PI / 4, 12)
  })

  test('packs in two lanes lie side by side: their signals add', () => {
    const blocks = [1, 2].map(
      (lanes) => situationOf(machine(), samplePoint({ lanes })).sceneAt(0.5, 'central').block!.sideBySide,
    )
    expect(blocks).toEqual([1, 2])
  })

  test('sizes are spoken of up to 12 mm, however thin the food; in a bore up to what it lets through', () => {
    expect(situationOf(machine(), samplePoint({ heightMm: 6 })).limitMm).toBe(12)
    const narrow = { ...NO_OPENING, stage: 'pumped' as const, pipeDiameterMm: 10 }
    expect(situationOf(machine(), samplePoint(narrow)).limitMm).toBe(10)
  })

  test('a pumped food is a stream, all else enters and leaves', () => {
    const flow = (changes: Parameters<typeof samplePoint>[0]) =>
      situationOf(machine(), samplePoint(changes)).sceneAt(0.5, 'central').flow
    expect(flow({ ...NO_OPENING, stage: 'pumped', pipeDiameterMm: 80 })).toBe('stream')
    expect(flow({})).toBe('block')
    expect(flow({ ...NO_OPENING, stage: 'free-fall', fallHeightMm: 800, kgPerHour: 2000 })).toBe('block')
  })
})
