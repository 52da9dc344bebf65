import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { detectabilityOfOne } from '../../src/xray/observer/detectability.ts'
import { bedPoint, grainShare } from '../../src/xray/observer/grain-threshold.ts'
import { IDEAL } from '../../src/xray/observer/practice.ts'
import { objectIn, setScene } from '../../src/xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../src/xray/places/pack-in-beam.ts'
import { thresholdDirect } from './direct-threshold.ts'

/** Thirty thresholds in grain computed by an independent implementation; see the note in the file. */
const fixture = (name: string) =>
  JSON.parse(readFileSync(new URL(`./fixtures/${name}.json`, import.meta.url), 'utf8'))
const worked: {
  cases: {
    title: string
    z: number
    tail: number
    rows: { sizeMm: number; dPrime: number; grainShare: number; skew: number; T: number }[]
  }[]
} = fixture('worked-thresholds')
const briefs: { cases: { brief: { title: string } }[] } = fixture('worked-cases')
const TOLERANCE = 0.01

function quartzIn(title: string) {
  const parsed = parseBrief(briefs.cases.find(({ brief }) => brief.title === title)!.brief)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  const machine = parsed.brief.equipment[0] as XrayMachine
  const build = buildOf(machine)
  const point = parsed.brief.points[0]!
  const setting = { kV: machine.kV!, mA: machine.mA! }
  const scene = setScene(build, point, packInBeam(point, build), setting, IDEAL)
  const contaminant = parsed.brief.contaminants.find(({ material }) => material === 'quartz')!
  return { scene, quartz: objectIn(scene, contaminant, materialAttenuation('quartz')) }
}

describe.each(worked.cases)('thresholds in grain: $title', ({ title, z, tail, rows }) => {
  const { scene, quartz } = quartzIn(title)

  it('z and the chance of a false reject at one place', () => {
    expect(scene.thresholdZ).toBeCloseTo(z, 3)
    expect(scene.tail / tail).toBeCloseTo(1, 6)
  })

  it.each(rows)('quartz of $sizeMm mm', ({ sizeMm, dPrime, grainShare: share, T }) => {
    const off = (computed: number, given: number) => Math.abs(computed / given - 1)
    expect(off(detectabilityOfOne(scene.observer.finer(), quartz, sizeMm), dPrime)).toBeLessThan(0.005)
    expect(off(grainShare(scene.observer.overBed(), quartz, sizeMm), share)).toBeLessThan(TOLERANCE)
    expect(off(bedPoint(scene.observer, quartz, sizeMm, tail, z), T)).toBeLessThan(TOLERANCE)
  })
})

it('the equations written out give the same', () => {
  const { title, tail, rows } = worked.cases[0]!
  const { scene } = quartzIn(title)
  const { sizeMm, T, skew } = rows[3]!
  const object = { shape: 'sphere' as const, muPerMm: materialAttenuation('quartz'), food: scene.food }
  const direct = thresholdDirect(scene.channels, scene.pack, scene.observer.imaging, object, sizeMm, tail)
  expect(Math.abs(direct.threshold / T - 1)).toBeLessThan(0.005)
  expect(direct.skewness).toBeCloseTo(skew, 2)
})
