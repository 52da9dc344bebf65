import { describe, expect, it } from 'vitest'
import type { Part, Point } from '../../../src/contract/index.ts'
import { buildOf } from '../../../src/xray/beam/exposure.ts'
import { packInBeam } from '../../../src/xray/places/pack-in-beam.ts'
import { placesOf, stateOf } from '../../../src/xray/places/zones.ts'
import { samplePoint } from '../../coil/sample-point.ts'
import { sampleMachine } from './sample-machine.ts'

const WALL: Part = { material: 'glass_container', mm: 2.5, place: 'wall', unevennessMm: 0.3 }
const BASE: Part = { material: 'glass_container', mm: 4, place: 'base', unevennessMm: 0.3 }
const CAP: Part = { material: 'steel', mm: 0.17, place: 'closure' }

const jar = samplePoint({
  heightMm: 95,
  filledMm: 95,
  widthMm: 63,
  lengthMm: 63,
  outline: 'cylinder',
  parts: [WALL, BASE, CAP],
})

function places(point: Point, beam: 'down' | 'side', tiltDeg = 0) {
  const build = buildOf(sampleMachine({ beam }))
  const all = placesOf(point, build, packInBeam(point, build), tiltDeg)
  const named = (name: string) => {
    const found = all.find((place) => place.name === name)
    if (!found) throw new Error(`no ${name}`)
    return found
  }
  return { all, named, names: all.map(({ name }) => name) }
}

/** Inside radius 31.5 mm, outside 34 mm; cos 20° = 0.93969, sin 20° = 0.34202. All figures by hand. */
describe('a jar from the side', () => {
  const { named, names, all } = places(jar, 'side')
  it('has a body, a wall edge, a heel, a base, a shoulder and a closure', () => {
    expect(names).toEqual(['body', 'wall edge', 'heel', 'base', 'shoulder', 'closure'])
  })
  it('crosses two walls in the body, 25.6 mm where it grazes the wall, three times the two walls in the heel', () => {
    expect(named('body').pathMm).toBeCloseTo(5, 9)
    expect(named('body').pack!.pathMm).toBe(63)
    expect(named('wall edge').pathMm).toBeCloseTo(25.593, 3)
    expect(named('wall edge').pack!.packing).toBe(0)
    expect(named('heel').pathMm).toBeCloseTo(15, 9)
    expect(named('shoulder').pathMm).toBeCloseTo(15, 9)
  })
  it('slants the unevenness of the wall where it grazes it: 0.3 × 34/12.80', () => {
    expect(named('wall edge').pack!.parts[0]!.unevennessMm).toBeCloseTo(0.3 * 2.657, 3)
    expect(named('heel').pack!.parts[0]!.unevennessMm).toBeCloseTo(0.3, 9)
  })
  it('sees nothing against base and closure', () => {
    expect(named('base').pack).toBeNull()
    expect(named('closure').pack).toBeNull()
  })
  it('shares the inside out: 5 mm of 95 at each end, of them (53/63)² in the middle', () => {
    const layer = 5 / 95
    expect(named('base').share).toBeCloseTo(layer * (53 / 63) ** 2, 9)
    expect(named('heel').share).toBeCloseTo(layer * (1 - (53 / 63) ** 2), 9)
    expect(all.reduce((sum, { share }) => sum + share!, 0)).toBeCloseTo(1, 9)
  })
})

describe('a jar in a beam from the side tilted by 20 degrees', () => {
  const { named } = places(jar, 'side', 20)
  it('crosses food and walls at 1/cos', () => {
    expect(named('body').pack!.pathMm).toBeCloseTo(63 / 0.93969, 3)
    expect(named('body').pathMm).toBeCloseTo(5 / 0.93969, 3)
  })
  it('crosses base and closure at 1/sin, and one wall', () => {
    expect(named('base').pathMm).toBeCloseTo(4 / 0.34202 + 2.5 / 0.93969, 3)
    expect(named('closure').pathMm).toBeCloseTo(0.17 / 0.34202 + 2.5 / 0.93969, 3)
  })
  it('crosses one plain wall and one thickened in the heel', () => {
    expect(named('heel').pathMm).toBeCloseTo((2.5 + 3 * 2.5) / 0.93969, 3)
  })
})

describe('other packs', () => {
  it('a jar from above: base as the body, the heel with two more bases and the shoulder, the wall in its own shadow', () => {
    const { named } = places(jar, 'down')
    expect(named('base').pathMm).toBeCloseTo(4.17, 9)
    expect(named('heel').pathMm).toBeCloseTo(4.17 + 2 * 4 + 3 * 2.5, 9)
    expect(named('wall edge').pack).toBeNull()
  })
  it('a can has seams in place of heel and shoulder', () => {
    const steel = (place: Part['place']): Part => ({ material: 'steel', mm: 0.2, place })
    const can = { ...jar, parts: [steel('wall'), steel('base'), steel('lid')] }
    const side = places(can, 'side')
    expect(side.names).toEqual(['body', 'wall edge', 'seam', 'base', 'closure'])
    expect(side.named('seam').pathMm).toBeCloseTo(1.2, 9)
    expect(places(can, 'down').named('seam').pathMm).toBeCloseTo(0.4 + 2 * 0.2 + 2 * 0.2, 9)
  })
  it('a plastic pot lets a level beam through its base', () => {
    const pp = (place: Part['place'], mm: number): Part => ({ material: 'pp', mm, place })
    const pot = { ...jar, parts: [pp('wall', 0.8), pp('base', 1)] }
    const { named, names } = places(pot, 'side')
    expect(names).toEqual(['body', 'wall edge', 'heel', 'base'])
    expect(named('base').pathMm).toBeCloseTo(63 + 1.6, 9)
  })
  it('a tray has a corner of three layers and a rim along its side wall: 0.5/sin 15°', () => {
    const tray = samplePoint({ parts: [{ material: 'pp', mm: 0.5, place: 'tray' }] })
    const { named, names } = places(tray, 'down')
    expect(names).toEqual(['body', 'corner', 'rim'])
    expect(named('corner').pathMm).toBeCloseTo(1.5, 9)
    expect(named('rim').pathMm).toBeCloseTo(0.5 / 0.25882, 3)
  })
  it('a bag has crimped ends without food, a carton folded corners with it', () => {
    const bag = samplePoint({ parts: [{ material: 'pe', mm: 0.05, place: 'wrap' }] })
    expect(places(bag, 'down').named('crimp').pathMm).toBeCloseTo(0.3, 9)
    expect(places(bag, 'down').named('crimp').pack!.packing).toBe(0)
    const carton = samplePoint({ parts: [{ material: 'carton', mm: 0.5, place: 'wrap' }] })
    expect(places(carton, 'down').named('corner').pathMm).toBeCloseTo(3, 9)
    expect(places(carton, 'down').named('corner').pack!.packing).toBe(1)
  })
  it('bare food has no places', () => {
    expect(places(samplePoint(), 'down').all).toEqual([])
  })
})

describe('the state of a place', () => {
  it('is findable up to 1.15 times the middle and no further', () => {
    expect(stateOf(2.3, 2, null)).toBe('findable')
    expect(stateOf(2.31, 2, null)).toBe('degraded')
    expect(stateOf(null, 2, null)).toBe('blind')
  })
  it('is degraded where the size asked lies between it and the middle', () => {
    expect(stateOf(2.2, 2, 2.1)).toBe('degraded')
    expect(stateOf(2.1, 2, 2.1)).toBe('findable')
    expect(stateOf(2.2, 2.15, 2.1)).toBe('findable')
  })
})
