import { describe, expect, it } from 'vitest'
import type { Part, Place, Point } from '../../../src/contract/index.ts'
import { buildOf } from '../../../src/xray/beam/exposure.ts'
import { containerKind, isDense, partAt } from '../../../src/xray/places/container.ts'
import { crossings } from '../../../src/xray/places/crossings.ts'
import {
  beamPathMm,
  crossed,
  crossedAslant,
  foodAttenuation,
  materialAttenuation,
  packInBeam,
  projectedAreaMm2,
} from '../../../src/xray/places/pack-in-beam.ts'
import { containerMm, slanted, withoutFood } from '../../../src/xray/places/place.ts'
import { settlingOf } from '../../../src/xray/places/settling.ts'
import { EDGE_MM, endShares } from '../../../src/xray/places/shares.ts'
import { THICKENING, THICKENING_WORDS } from '../../../src/xray/places/thickening.ts'
import { wallEdgeShare } from '../../../src/xray/places/wall-chord.ts'
import { placesOf, zonesOf } from '../../../src/xray/places/zones.ts'
import { sampleContaminant, samplePoint } from '../../coil/sample-point.ts'
import { sampleMachine } from './sample-machine.ts'

/** Every figure here is worked out by hand from the sizes of the pack; 5 mm count as edge, a fold as 3 layers. */
const part = (material: string, mm: number, place: Place, unevennessMm?: number): Part => ({
  material,
  mm,
  place,
  ...(unevennessMm === undefined ? {} : { unevennessMm }),
})
const glass = (mm: number, place: Place) => part('glass_container', mm, place)
const pp = (mm: number, place: Place) => part('pp', mm, place)
const steel = (mm: number, place: Place) => part('steel', mm, place)

const build = (beam: 'down' | 'side', beltMm = 0) => ({ ...buildOf(sampleMachine({ beam })), beltMm })

/** Each place with its level, share, container material in the beam and food in the beam (null: hidden). */
function told(point: Point, beam: 'down' | 'side', tiltDeg = 0) {
  const all = placesOf(point, build(beam), packInBeam(point, build(beam)), tiltDeg)
  return all.map(({ name, level, share, pathMm, pack }) => [
    name,
    level,
    share === null ? null : Number(share.toFixed(4)),
    pathMm === null ? null : Number(pathMm.toFixed(3)),
    pack && [Number(pack.pathMm.toFixed(3)), pack.packing, pack.grainMm],
  ])
}
const why = (point: Point, beam: 'down' | 'side', tiltDeg = 0) =>
  placesOf(point, build(beam), packInBeam(point, build(beam)), tiltDeg).map(({ name, why: words }) => [
    name,
    words,
  ])
const round = { heightMm: 100, filledMm: 90, widthMm: 60, lengthMm: 60, outline: 'cylinder' } as const
const box = { heightMm: 100, filledMm: 90, widthMm: 60, lengthMm: 80, outline: 'box' } as const

describe('the parts of a pack', () => {
  it('make a jar, a can, a pot, a tray, a carton, a bag, or nothing', () => {
    const kind = (parts: Part[], stage: Point['stage'] = 'packed') => containerKind({ parts, stage })
    expect(kind([pp(1, 'base'), glass(2, 'wall')])).toBe('jar')
    expect(kind([steel(0.2, 'wall')])).toBe('can')
    expect(kind([pp(1, 'wall'), pp(1, 'tray')])).toBe('pot')
    expect(kind([pp(0.5, 'tray'), part('carton', 0.5, 'sleeve')])).toBe('tray')
    expect(kind([pp(0.05, 'wrap'), part('carton', 0.5, 'sleeve')])).toBe('carton')
    expect(kind([pp(0.05, 'sleeve')])).toBe('bag')
    expect(kind([pp(0.05, 'wrap')])).toBe('bag')
    expect(kind([pp(0.05, 'lid')])).toBe('none')
    expect(kind([pp(0.05, 'wrap')], 'loose')).toBe('none')
    expect(kind([])).toBe('none')
  })
  it('are dense where they are of glass or metal', () => {
    expect(
      [glass(1, 'wall'), steel(1, 'base'), pp(1, 'wall'), part('carton', 1, 'wrap')].map(isDense),
    ).toEqual([true, true, false, false])
  })
  it('are taken by their place, the first of several', () => {
    const [lid, closure] = [pp(1, 'lid'), steel(0.2, 'closure')]
    expect(partAt({ parts: [lid, closure] }, 'closure', 'lid')).toBe(lid)
    expect(partAt({ parts: [lid, closure] }, 'closure')).toBe(closure)
    expect(partAt({ parts: [lid] }, 'wall')).toBeUndefined()
  })
  it('are crossed by a beam from above once or twice, and from the side only where they stand', () => {
    const places = ['base', 'lid', 'closure', 'tray', 'wrap', 'sleeve', 'wall'] as const
    expect(places.map((place) => crossings('down', place))).toEqual([1, 1, 1, 1, 2, 2, 0])
    expect(places.map((place) => crossings('side', place))).toEqual([0, 0, 0, 0, 2, 2, 2])
  })
})

describe('a pack in the beam', () => {
  const point = samplePoint({
    ...round,
    parts: [part('pp', 1, 'wall', 0.2), pp(0, 'base'), pp(2, 'lid'), pp(0.1, 'wrap')],
  })
  const layers = (beam: 'down' | 'side', beltMm: number) =>
    packInBeam(point, build(beam, beltMm)).parts.map(({ mm, crossings: n, unevennessMm }) => [
      mm,
      n,
      unevennessMm,
    ])
  it('has what is crossed and nothing else, and the belt below it from above alone', () => {
    expect(layers('down', 0)).toEqual([
      [2, 1, 0],
      [0.1, 2, 0],
    ])
    expect(layers('down', 2.5)).toEqual([
      [2, 1, 0],
      [0.1, 2, 0],
      [2.5, 1, 0],
    ])
    expect(layers('side', 2.5)).toEqual([
      [1, 2, 0.2],
      [0.1, 2, 0],
    ])
    const belt = packInBeam(point, build('down', 2.5)).parts.at(-1)!
    expect(belt.muPerMm).toEqual(materialAttenuation('polyurethane'))
  })
  it('is as deep as it is filled from above, as wide as it is from the side, and carries its food', () => {
    expect([beamPathMm(point, 'down'), beamPathMm(point, 'side')]).toEqual([90, 60])
    const grains = samplePoint({}, { packing: 0.6, grainMm: 7, unevennessMm: 0.4 })
    expect(packInBeam(grains, build('down'))).toMatchObject({
      pathMm: 40,
      packing: 0.6,
      grainMm: 7,
      unevennessMm: 0.4,
      solidMuPerMm: foodAttenuation(grains),
    })
  })
  it('covers length × width from above, π/4 of it if round, and length × filled height from the side', () => {
    expect(projectedAreaMm2(point, 'side')).toBe(60 * 90)
    expect(projectedAreaMm2(point, 'down')).toBeCloseTo(60 * 60 * 0.785398, 2)
    expect(projectedAreaMm2(samplePoint(box), 'down')).toBe(60 * 80)
  })
  it('counts a material by its density: twice as dense, twice the attenuation; an unknown one is an error', () => {
    const [own, twice] = [materialAttenuation('pp', 0.9), materialAttenuation('pp', 1.8)]
    expect(twice[10]! / own[10]!).toBeCloseTo(2, 9)
    expect(materialAttenuation('pp')[10]).toBeGreaterThan(0)
    expect(() => materialAttenuation('no such thing')).toThrow('no such material: no such thing')
  })
  it('at a slant is longer in every layer, unevenness and all; of a plate once, only its way is', () => {
    const wall = part('pp', 1, 'wall', 0.2)
    expect(crossed(wall, 2, 2)).toMatchObject({ mm: 2, crossings: 2, unevennessMm: 0.4 })
    expect(crossed(pp(1, 'wall'), 1)).toMatchObject({ mm: 1, crossings: 1, unevennessMm: 0 })
    const aslant = crossedAslant(wall, Math.PI / 6)
    expect(aslant.mm).toBeCloseTo(2, 9)
    expect(aslant).toMatchObject({ crossings: 1, unevennessMm: 0.2 })
    const pack = { ...packInBeam(point, build('down')), parts: [crossed(wall, 2), crossed(pp(3, 'lid'), 1)] }
    expect(containerMm(pack.parts)).toBe(5)
    const longer = slanted(pack, 2)
    expect(longer.pathMm).toBe(180)
    expect(longer.parts.map(({ mm, unevennessMm }) => [mm, unevennessMm])).toEqual([
      [2, 0.4],
      [6, 0],
    ])
    const empty = withoutFood({ ...pack, grainMm: 3, packing: 0.6 }, [])
    expect(empty).toMatchObject({ pathMm: 90, packing: 0, grainMm: 0, unevennessMm: 0, parts: [] })
  })
})

describe('how the inside is shared out', () => {
  it('5 mm at each end; of a round one (50/60)² is middle, of a box 50/60 × 70/80', () => {
    expect(EDGE_MM).toBe(5)
    const circle = endShares(samplePoint(round), 100)
    expect(circle.middle).toBeCloseTo(0.05 * (50 / 60) ** 2, 12)
    expect(circle.ring).toBeCloseTo(0.05 * (1 - (50 / 60) ** 2), 12)
    expect(circle.between).toBeCloseTo(0.9, 12)
    expect(endShares(samplePoint(box), 100).middle).toBeCloseTo(0.05 * (50 / 60) * (70 / 80), 12)
  })
  it('a round one by its width alone', () => {
    expect(endShares({ ...round, lengthMm: 99 }, 100).middle).toBeCloseTo(0.05 * (50 / 60) ** 2, 12)
  })
  it('a pack of 8 mm is all ends, one of 10 mm across all ring', () => {
    expect(endShares(samplePoint(box), 8).between).toBe(0)
    const narrow = endShares(samplePoint({ ...box, widthMm: 8 }), 100)
    expect(narrow.middle).toBe(0)
    expect(narrow.ring).toBeCloseTo(0.05, 12)
  })
})

const JAR = samplePoint({ ...round, parts: [glass(2, 'wall'), glass(4, 'base'), steel(0.2, 'closure')] })
const edgeOfJar = wallEdgeShare(30, 2)
const MIDDLE = 0.05 * (50 / 60) ** 2
const RING = 0.05 - MIDDLE
const four = (value: number) => Number(value.toFixed(4))
const FOOD = [60, 1, 0]

describe('the places of a jar of 60 mm, wall 2, base 4, lid 0.2 mm', () => {
  it('from the side: walls twice, three times as thick at heel and shoulder, grazing √(32² − 30²) twice', () => {
    const grazing = 2 * Math.sqrt(32 ** 2 - 30 ** 2)
    expect(told(JAR, 'side')).toEqual([
      ['body', 'middle', four(0.9 - 0.9 * edgeOfJar), 4, FOOD],
      ['wall edge', 'beside', four(0.9 * edgeOfJar), Number(grazing.toFixed(3)), [60, 0, 0]],
      ['heel', 'bottom', four(RING), 12, FOOD],
      ['base', 'bottom', four(MIDDLE), 60, null],
      ['shoulder', 'top', four(RING), 12, FOOD],
      ['closure', 'top', four(MIDDLE), 60, null],
    ])
    expect(why(JAR, 'side')).toEqual([
      ['body', 'middle of the container'],
      ['wall edge', 'the ray that grazes the inside of the wall crosses the most of it and no food'],
      ['heel', THICKENING_WORDS],
      [
        'base',
        'a level beam runs along the base and its rim: what lies in its hollow or against it is hidden',
      ],
      ['shoulder', THICKENING_WORDS],
      [
        'closure',
        'a level beam runs along the closure and its rim: what lies in its hollow or against it is hidden',
      ],
    ])
    expect(THICKENING_WORDS).toBe('taken as 3 times the plain layer (common practice: 3 to 10 times)')
  })
  it('tilted by 30 degrees: ÷ cos 30° = 1.1547, base and lid ÷ sin 30° = 2, a heel thick on one side', () => {
    const c = 1 / Math.cos(Math.PI / 6)
    const food = [Number((60 * c).toFixed(3)), 1, 0]
    const at = (mm: number) => Number(mm.toFixed(3))
    expect(told(JAR, 'side', 30)).toEqual([
      ['body', 'middle', four(0.9 - 0.9 * edgeOfJar), at(4 * c), food],
      ['wall edge', 'beside', four(0.9 * edgeOfJar), at(2 * Math.sqrt(124) * c), [60, 0, 0]],
      ['heel', 'bottom', four(RING), at(8 * c), food],
      ['base', 'bottom', four(MIDDLE), at(2 * c + 8), food],
      ['shoulder', 'top', four(RING), at(8 * c), food],
      ['closure', 'top', four(MIDDLE), at(2 * c + 0.4), food],
    ])
    expect(why(JAR, 'side', 30).filter(([name]) => ['body', 'base'].includes(name!))).toEqual([
      ['body', 'middle of the container, at a slant'],
      ['base', 'the tilted beam crosses one wall and the base at a slant'],
    ])
  })
  it('from above: base and lid everywhere, two more bases and three walls at the heel, the wall in its shadow', () => {
    const food = [90, 1, 0]
    expect(told(JAR, 'down')).toEqual([
      ['body', 'middle', four(0.9 - 0.9 * edgeOfJar), 4.2, food],
      ['base', 'bottom', four(MIDDLE), 4.2, food],
      ['heel', 'bottom', four(RING), 4.2 + 8 + 6, food],
      ['wall edge', 'beside', four(0.9 * edgeOfJar), 100, null],
      ['closure', 'top', 0.05, 4.2, food],
    ])
    expect(why(JAR, 'down')).toEqual([
      ['body', 'middle of the container'],
      ['base', 'the beam crosses the base once, as in the middle'],
      ['heel', THICKENING_WORDS],
      ['wall edge', 'the beam runs down along the wall and leaves its shadow beside it'],
      ['closure', 'the beam crosses the closure, as in the middle'],
    ])
  })
  it('from above and tilted by 30 degrees: the wall is crossed once at a slant, twice as long', () => {
    const c = 1 / Math.cos(Math.PI / 6)
    const edge = told(JAR, 'down', 30)[3]
    expect(edge).toEqual([
      'wall edge',
      'beside',
      four(0.9 * edgeOfJar),
      Number((4.2 * c + 4).toFixed(3)),
      [Number((90 * c).toFixed(3)), 1, 0],
    ])
    expect(why(JAR, 'down', 30)[3]).toEqual(['wall edge', 'the tilted beam crosses the wall at a slant'])
    expect(told(JAR, 'down', 30)[2]![3]).toBe(Number(((4.2 + 14) * c).toFixed(3)))
  })
})

describe('other standing packs', () => {
  const pot = (more: Part[], shape: Partial<Point> = round) =>
    samplePoint({ ...shape, parts: [pp(1, 'wall'), ...more] })
  it('a pot without base has a foot of three walls; it lets a beam along its wall and base through', () => {
    expect(told(pot([]), 'down')).toEqual([
      ['body', 'middle', four(0.9 - 0.9 * wallEdgeShare(30, 1)), 0, [90, 1, 0]],
      ['base', 'bottom', four(MIDDLE), 0, [90, 1, 0]],
      ['heel', 'bottom', four(RING), 3, [90, 1, 0]],
      ['wall edge', 'beside', four(0.9 * wallEdgeShare(30, 1)), 90, [90, 0, 0]],
    ])
    expect(why(pot([]), 'down')[3]![1]).toBe('the beam runs down along the wall, which lets it through')
    const side = told(pot([pp(1, 'base'), pp(0.5, 'lid')]), 'side')
    expect(side.map(([name, , share, mm]) => [name, share, mm])).toEqual([
      ['body', four(0.9 - 0.9 * wallEdgeShare(30, 1)), 2],
      ['wall edge', four(0.9 * wallEdgeShare(30, 1)), Number((2 * Math.sqrt(61)).toFixed(3))],
      ['heel', four(RING), 6],
      ['base', four(MIDDLE), 62],
      ['closure', 0.05, 62],
    ])
    expect(side[3]![4]).toEqual([60, 0, 0])
    expect(why(pot([pp(1, 'base')]), 'side')[3]![1]).toBe(
      'a level beam runs along the base, which lets it through',
    )
  })
  it('a pot with a lid of steel hides what floats against it, a jar with a lid of plastic too', () => {
    const hidden = (point: Point) => told(point, 'side').filter(([, , , , food]) => food === null)
    expect(hidden(pot([steel(0.2, 'lid')])).map(([name]) => name)).toEqual(['closure'])
    const jar = samplePoint({ ...round, parts: [glass(2, 'wall'), pp(1, 'lid')] })
    expect(hidden(jar).map(([name]) => name)).toEqual(['closure'])
  })
  it('a box: its flat wall stands along the beam in 2 × 5 of 80 mm of what lies between its ends', () => {
    expect(told(pot([], box), 'side')[1]).toEqual(['wall edge', 'beside', 0.1125, 60, [60, 0, 0]])
    expect(why(pot([], box), 'side')[1]![1]).toBe('the beam runs along the flat wall, which lets it through')
    const tin = samplePoint({ ...box, parts: [steel(0.2, 'wall')] })
    expect(told(tin, 'side')[1]).toEqual(['wall edge', 'beside', 0.1125, 60, null])
    expect(why(tin, 'side')[1]![1]).toBe('the beam runs along the flat wall')
    expect(told(samplePoint({ ...box, lengthMm: 8, parts: [pp(1, 'wall')] }), 'side')[1]![2]).toBe(0.9)
    expect(told(pot([], box), 'down')[3]![2]).toBe(0)
  })
  it('a sleeve around it is crossed twice wherever the wall is, and nowhere thicker', () => {
    const bare = told(pot([pp(1, 'base')]), 'side').map(([, , , mm]) => mm as number)
    const more = told(pot([pp(1, 'base'), pp(0.3, 'sleeve')]), 'side').map(([, , , mm]) => mm as number)
    expect(more.map((mm, at) => Number((mm - bare[at]!).toFixed(3)))).toEqual([0.6, 0.6, 0.6, 0.6])
    const tilted = told(pot([pp(1, 'base'), pp(0.3, 'sleeve')]), 'side', 60)
    expect(tilted[0]![3]).toBeCloseTo(4 + 1.2, 3)
  })
  it('a second wall and a wrap are crossed twice too', () => {
    const more = told(pot([pp(0.3, 'wall'), pp(0.1, 'wrap')]), 'side').map(([, , , mm]) => mm as number)
    const bare = told(pot([]), 'side').map(([, , , mm]) => mm as number)
    expect(more.map((mm, at) => Number((mm - bare[at]!).toFixed(3)))).toEqual([0.8, 0.8, 0.8])
  })
  it('a tilted ray that grazes a wall sees its unevenness ÷ cos longer: 0.2 × 31/√61 × 2', () => {
    const uneven = samplePoint({ ...round, parts: [part('pp', 1, 'wall', 0.2)] })
    const places = placesOf(uneven, build('side'), packInBeam(uneven, build('side')), 60)
    const edge = places.find(({ name }) => name === 'wall edge')!
    expect(edge.pack!.parts[0]!.unevennessMm).toBeCloseTo(((0.2 * 31) / Math.sqrt(61)) * 2, 9)
  })
  it('a can has a seam for a heel and its lid folded there, from above and from the side', () => {
    const can = samplePoint({
      ...round,
      parts: [steel(0.2, 'wall'), steel(0.3, 'base'), steel(0.25, 'lid')],
    })
    expect(told(can, 'down').map(([name, , , mm]) => [name, mm])).toEqual([
      ['body', 0.55],
      ['base', 0.55],
      ['seam', 0.55 + 0.6 + 0.5],
      ['wall edge', 100],
      ['closure', 0.55],
    ])
    expect(told(can, 'side').map(([name, , share]) => [name, share])).toEqual([
      ['body', four(0.9 - 0.9 * wallEdgeShare(30, 0.2))],
      ['wall edge', four(0.9 * wallEdgeShare(30, 0.2))],
      ['seam', four(RING)],
      ['base', four(MIDDLE)],
      ['closure', 0.05],
    ])
  })
})

describe('lying packs', () => {
  it('a tray of 60 × 80 mm: corners 100 of 4800, rim 10 × 140 of 4800, and from the side one place', () => {
    const tray = samplePoint({ ...box, parts: [pp(0.5, 'tray'), pp(0.05, 'lid')] })
    const rows = told(tray, 'down')
    expect(rows.map(([name, level, share, mm]) => [name, level, share, mm])).toEqual([
      ['body', 'bottom', four(1 - 100 / 4800 - 1400 / 4800), 0.55],
      ['corner', 'bottom', four(100 / 4800), 0.55 + 1],
      ['rim', 'beside', four(1400 / 4800), Number((0.05 + 0.5 / Math.sin(Math.PI / 12)).toFixed(3))],
    ])
    expect(why(tray, 'down')).toEqual([
      ['body', 'middle of the tray'],
      ['corner', THICKENING_WORDS],
      ['rim', 'the side wall stands 15 degrees off the beam (judgement)'],
    ])
    expect(told(tray, 'side')).toEqual([['body', 'bottom', 1, 0, [60, 1, 0]]])
  })
  it('a bag: film and sleeve four layers more at its ends, where no food lies', () => {
    const bag = samplePoint({ ...box, parts: [pp(0.1, 'wrap'), pp(0.2, 'sleeve'), pp(3, 'lid')] })
    expect(told(bag, 'down')).toEqual([
      ['body', 'middle', 1, 3.6, [90, 1, 0]],
      ['crimp', 'beside', null, Number((3.6 + 4 * 0.3).toFixed(3)), [90, 0, 0]],
    ])
    expect(why(bag, 'down')).toEqual([
      ['body', 'middle of the pack'],
      ['crimp', `no food lies there; the film ${THICKENING_WORDS}`],
    ])
  })
  it('a carton: corners of 4 × 25 of 4800 mm² with four layers more of every board', () => {
    const carton = samplePoint({
      ...box,
      parts: [part('carton', 0.5, 'wrap'), pp(0.1, 'sleeve'), pp(1, 'lid')],
    })
    expect(told(carton, 'down')).toEqual([
      ['body', 'middle', four(1 - 100 / 4800), 2.2, [90, 1, 0]],
      ['corner', 'beside', four(100 / 4800), Number((2.2 + 2 + 0.4).toFixed(3)), [90, 1, 0]],
    ])
    expect(why(carton, 'down')).toEqual([
      ['body', 'middle of the pack'],
      ['corner', `flaps ${THICKENING_WORDS}`],
    ])
    const tiny = { ...carton, widthMm: 6, lengthMm: 6 }
    expect(told(tiny, 'down').map(([, , share]) => share)).toEqual([0, 1])
  })
  it('at a slant crosses everything longer', () => {
    const bag = samplePoint({ ...box, parts: [pp(0.1, 'wrap')] })
    expect(told(bag, 'down', 60)[0]).toEqual(['body', 'middle', 1, 0.4, [180, 1, 0]])
  })
  it('thickens three times', () => expect(THICKENING).toBe(3))
})

describe('the zones of one contaminant', () => {
  const places = placesOf(JAR, build('side'), packInBeam(JAR, build('side')))
  const sizes = (expectedMm: number | null) => ({ bestMm: 1, expectedMm, cautiousMm: null })
  const judged = places.map((place) => ({ place, sizes: sizes(place.name === 'heel' ? 4 : 2) }))
  const lies = (settling: 'sinks' | 'floats' | 'stays') =>
    zonesOf(judged, settling, sampleContaminant('steel', { mustFindMm: 3 }))
  it('say where a piece that sinks lies, and where not', () => {
    expect(
      lies('sinks').map(({ name, canLieThere, settlesThere }) => [name, canLieThere, settlesThere]),
    ).toEqual([
      ['body', false, false],
      ['wall edge', false, false],
      ['heel', true, true],
      ['base', true, true],
      ['shoulder', false, false],
      ['closure', false, false],
    ])
    expect(lies('sinks')[0]!.why).toBe('middle of the container; it sinks to the bottom')
    expect(lies('sinks')[2]!.why).toBe(`${THICKENING_WORDS}; it sinks there`)
    expect(lies('floats')[0]!.why).toBe('middle of the container; it floats to the top')
    expect(lies('floats')[4]!.why).toBe(`${THICKENING_WORDS}; it floats there`)
    expect(lies('stays').map(({ why: words }) => words)).toEqual(places.map((place) => place.why))
  })
  it('judge each place by the size there and keep three figures of its share, one decimal of its path', () => {
    const zones = lies('stays')
    expect(zones.map(({ state }) => state)).toEqual([
      'findable',
      'findable',
      'degraded',
      'findable',
      'findable',
      'findable',
    ])
    expect(zones[2]!.share).toBe(Number(RING.toPrecision(3)))
    expect(zones[1]!.pathMm).toBe(22.3)
    const bare = { place: { ...places[0]!, share: null, pathMm: null }, sizes: sizes(null) }
    expect(zonesOf([bare], 'stays', sampleContaminant('steel'))[0]).toMatchObject({
      share: null,
      pathMm: null,
      state: 'blind',
    })
    expect(zonesOf([], 'stays', sampleContaminant('steel'))).toEqual([])
  })
})

describe('densities at the very edge', () => {
  const at = (densityGPerCm3: number, material = 'steel') =>
    settlingOf(samplePoint({}, { structure: 'liquid', densityGPerCm3 }), sampleContaminant(material))
  it('2 % more or less leaves a piece where it is; more does not; a material nobody lists stays', () => {
    const own = 7.85
    expect(at(own / 1.0199)).toBe('stays')
    expect(at(own / 1.0201)).toBe('sinks')
    expect(at(own / 0.9801)).toBe('stays')
    expect(at(own / 0.9799)).toBe('floats')
    expect(at(1, 'no such thing')).toBe('stays')
  })
})
