import { describe, expect, it } from 'vitest'
import { moved } from '../../../src/advice/change/lever.ts'
import { leversAt } from '../../../src/advice/change/levers.ts'
import { fittingOpening } from '../../../src/coil/opening/opening.ts'
import type { Machine, Point } from '../../../src/contract/index.ts'
import { briefOf, demoInput } from '../demo.ts'
import { SAMPLE_MACHINE } from '../sample.ts'

const COIL: Machine = { id: 'coil', family: 'coil', frequenciesKHz: [300], arrangement: 'tunnel' }
const SHARES = [0.1, 0.35, 0.6, 0.85, 1]

/** A lever of a demo's point, and the point with its moves made at some share. */
function lever(demo: string, at: number, id: string, machine: Machine = SAMPLE_MACHINE, over = {}) {
  const input = demoInput(demo)
  Object.assign(input.points[at]!, over)
  const brief = briefOf(input)
  const found = leversAt(brief.points[at]!, at, machine).find((one) => one.id === id)
  const pulled = (share: number): Point => briefOf(moved(brief.given, found!.at(share))).points[at]!
  return { found, before: brief.points[at]!, pulled }
}

describe('a shallower bed on a faster belt', () => {
  it('carries no less than before, at any share', () => {
    const { before, pulled } = lever('beans', 0, 'depth-with-speed')
    for (const share of SHARES) {
      const { heightMm, speedMPerMin } = pulled(share)
      expect(heightMm * speedMPerMin).toBeGreaterThanOrEqual(before.heightMm * before.speedMPerMin)
      expect(heightMm * speedMPerMin).toBeLessThan(before.heightMm * before.speedMPerMin * 1.1)
    }
  })
  it('is never shallower than a grain', () => {
    const { pulled } = lever('beans', 0, 'depth-with-speed', SAMPLE_MACHINE, { heightMm: 20 })
    expect(pulled(1).heightMm).toBeGreaterThanOrEqual(pulled(1).product.grainMm)
  })
  it('is no lever for packs', () => {
    expect(lever('hazelnuts', 1, 'depth-with-speed').found).toBeUndefined()
  })
})

describe('a slower belt', () => {
  it('keeps the packs per minute and a gap between packs', () => {
    const { before, pulled } = lever('sauce-jar', 0, 'speed')
    for (const share of SHARES) {
      const point = pulled(share)
      expect(point.packsPerMin).toBe(before.packsPerMin)
      expect(point.speedMPerMin).toBeLessThanOrEqual(before.speedMPerMin)
      expect((1000 * point.speedMPerMin) / point.packsPerMin!).toBeGreaterThan(point.lengthMm)
    }
  })
  it('is no lever where throughput is not known', () => {
    const input = { packsPerMin: undefined }
    expect(lever('sauce-jar', 0, 'speed', SAMPLE_MACHINE, input).found).toBeUndefined()
  })
})

describe('a lower opening', () => {
  it('is one of a coil whose opening the point sets, and still lets the pack through', () => {
    const { pulled } = lever('hazelnuts', 1, 'opening', COIL, { apertureHeightMm: 200 })
    expect(pulled(1).apertureHeightMm).toBe(fittingOpening(pulled(1)).heightMm)
    expect(pulled(0.3).apertureHeightMm).toBeLessThan(200)
  })
  it.each([
    ['x-ray', SAMPLE_MACHINE, { apertureHeightMm: 200 }],
    ['a machine with its own opening', { ...COIL, apertureHeightMm: 200 }, { apertureHeightMm: 200 }],
    ['an opening chosen for the pack already', COIL, {}],
  ] as const)('is no lever for %s', (_, machine, over) => {
    expect(lever('hazelnuts', 1, 'opening', machine as Machine, over).found).toBeUndefined()
  })
})

describe('a narrower pipe', () => {
  it('carries no less than before', () => {
    const { before, pulled } = lever('mince', 0, 'pipe')
    const flow = (point: Point) => point.pipeDiameterMm! ** 2 * point.speedMPerMin
    for (const share of SHARES) expect(flow(pulled(share))).toBeGreaterThanOrEqual(flow(before))
    expect(pulled(1).heightMm).toBe(pulled(1).pipeDiameterMm)
  })
  it('narrows a stream that would not fit it, and leaves one that does', () => {
    const pipe = { pipeDiameterMm: 76, heightMm: 74, widthMm: 30 }
    const { pulled } = lever('mince', 0, 'pipe', undefined, pipe)
    expect(pulled(1).heightMm).toBe(pulled(1).pipeDiameterMm)
    expect(pulled(1).widthMm).toBe(30)
  })
})

describe('another wrapping', () => {
  it('takes the place of foil, for a coil alone', () => {
    const { pulled } = lever('chocolate', 1, 'metallised-film', COIL)
    expect(pulled(1).parts.map(({ material }) => material)).not.toContain('aluminium_foil')
    expect(lever('chocolate', 1, 'plain-film').found).toBeUndefined()
    expect(lever('hazelnuts', 1, 'plain-film', COIL).found).toBeUndefined()
  })
})

it('no lever touches the food itself', () => {
  for (const demo of ['beans', 'hazelnuts', 'sauce-jar', 'mince', 'chocolate'])
    for (const machine of [SAMPLE_MACHINE, COIL])
      for (const one of leversAt(briefOf(demoInput(demo)).points[0]!, 0, machine))
        for (const { path } of one.at(1)) expect(path).not.toMatch(/product|composition|contaminants/)
})
