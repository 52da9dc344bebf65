import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import { machineSchema, type XrayMachine } from '../../src/contract/index.ts'
import { normalUpperTail } from '../../src/numerics/normal.ts'
import { tailPoint } from '../../src/numerics/tail-point.ts'
import { archetypes, figuresOf } from '../../src/reference/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { bedPoint } from '../../src/xray/observer/grain-threshold.ts'
import { PRACTICE } from '../../src/xray/observer/practice.ts'
import { objectIn, setScene } from '../../src/xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../src/xray/places/pack-in-beam.ts'
import { thresholdDirect } from './direct-threshold.ts'
import { wireThresholdDirect } from './direct-wire-threshold.ts'

/** Points of a bed's tail beside a far finer quadrature, where grains are few and pieces fine: the roughest answers. */
const WITHIN = 0.005

function seen(food: string, heightMm: number, machine: string, material: string, wireMm = 0) {
  const parsed = parseBrief({
    product: { food },
    points: [{ heightMm, widthMm: 160, lengthMm: 220, speedMPerMin: 40 }],
    contaminants: [wireMm ? { material, shape: 'wire', lengthMm: wireMm } : { material }],
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  const point = parsed.brief.points[0]!
  const build = buildOf(machineSchema.parse(figuresOf(archetypes.get(machine)!)) as XrayMachine)
  const scene = setScene(build, point, packInBeam(point, build), { kV: 70, mA: 8 }, PRACTICE)
  const muPerMm = materialAttenuation(material)
  const piece = objectIn(scene, parsed.brief.contaminants[0]!, muPerMm)
  return { scene, piece, muPerMm }
}

const BALLS = [
  { food: 'hazelnut', heightMm: 15, machine: 'xray-dual', material: 'ss316', sizeMm: 0.5 },
  { food: 'hazelnut', heightMm: 15, machine: 'xray-single', material: 'quartz', sizeMm: 1.2 },
  { food: 'almond', heightMm: 20, machine: 'xray-single', material: 'pvc', sizeMm: 3 },
  { food: 'rice', heightMm: 40, machine: 'xray-dual', material: 'ss316', sizeMm: 0.5 },
]
const WIRES = [
  { food: 'hazelnut', heightMm: 15, machine: 'xray-single', sizeMm: 0.3 },
  { food: 'hazelnut', heightMm: 15, machine: 'xray-dual', sizeMm: 0.5 },
  { food: 'almond', heightMm: 20, machine: 'xray-single', sizeMm: 0.5 },
]

describe('points of the tail of a clean bed are converged', () => {
  it.each(BALLS)('$sizeMm mm of $material in $heightMm mm of $food, $machine', (one) => {
    const { scene, piece, muPerMm } = seen(one.food, one.heightMm, one.machine, one.material)
    const { channels, pack, observer, food, tail, thresholdZ } = scene
    const object = { shape: 'sphere' as const, muPerMm, food }
    const direct = thresholdDirect(channels, pack, observer.imaging, object, one.sizeMm, tail)
    const point = bedPoint(observer, piece, one.sizeMm, tail, thresholdZ)
    expect(Math.abs(point / direct.threshold - 1)).toBeLessThan(WITHIN)
  })

  it.each(WIRES)(
    'wire of $sizeMm mm in $heightMm mm of $food, $machine',
    (one) => {
      const { scene, piece, muPerMm } = seen(one.food, one.heightMm, one.machine, 'ss316', 10)
      const { channels, pack, observer, food, tail, thresholdZ } = scene
      const object = { shape: 'wire' as const, muPerMm, food, lengthMm: 10, gatheredMm: piece.gatheredMm }
      const gathered = Math.min(piece.lengthMm, Math.max(piece.gatheredMm, one.sizeMm))
      const direct = wireThresholdDirect(
        channels,
        pack,
        observer.imaging,
        object,
        gathered,
        one.sizeMm,
        tail,
        thresholdZ,
      )
      const point = bedPoint(observer, piece, one.sizeMm, tail, thresholdZ)
      expect(Math.abs(point / direct - 1)).toBeLessThan(WITHIN)
    },
    60_000,
  )
})

describe('the point of a tail', () => {
  /** Poisson jumps of one height h beside normal noise: P(X > x) is a sum over their number. */
  const exact = (h: number, mean: number, x: number) => {
    const sigma = Math.sqrt(1 - mean * h * h)
    let chance = 0
    let weight = Math.exp(-mean)
    for (let k = 0; k < 200; k++) {
      chance += weight * normalUpperTail((x - h * (k - mean)) / sigma)
      weight *= mean / (k + 1)
    }
    return chance
  }
  it.each([
    { h: 0.3, mean: 5, within: 0.01 },
    { h: 1, mean: 0.5, within: 0.01 },
    { h: 3, mean: 0.05, within: 0.06 },
    { h: 8, mean: 0.01, within: 0.1 },
  ])('jumps of $h standard deviations, $mean of them on average', ({ h, mean, within }) => {
    const tail = 1e-7
    const noise = { answers: Float64Array.of(h), numbers: Float64Array.of(mean), count: 1, scale: 1 }
    const point = tailPoint(noise, tail, 5.2)
    // The saddle point smooths over the steps that few large jumps make of a tail.
    let [low, high] = [1, 200]
    for (let k = 0; k < 60; k++) {
      const x = (low + high) / 2
      if (exact(h, mean, x) > tail) low = x
      else high = x
    }
    expect(Math.abs(point / low - 1)).toBeLessThan(within)
  })
})
