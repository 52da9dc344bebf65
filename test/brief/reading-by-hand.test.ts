import { describe, expect, it } from 'vitest'
import { entersBehind, stepOfPoint, waysIn } from '../../src/brief/entry.ts'
import { geometryProblems, pitchMm } from '../../src/brief/geometry.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { hidesFromXrays, insertKind } from '../../src/brief/insert-kind.ts'
import { fillPoint } from '../../src/brief/point-defaults.ts'
import { fillProduct } from '../../src/brief/product-defaults.ts'
import { countAt, standsAt } from '../../src/brief/standing.ts'
import type { Brief, Machine, Point, ProductInput, Stage } from '../../src/contract/index.ts'
import { archetypes } from '../../src/reference/index.ts'
import { sampleBrief } from '../advice/sample.ts'
import { samplePoint } from '../coil/sample-point.ts'

const briefOf = (point: Point, given: object = {}): Brief =>
  ({ points: [point], given: { points: [given] } }) as never
const said = (point: Point, given: object = {}) =>
  geometryProblems(briefOf(point, given)).map(({ path, message }) => `${path}: ${message}`)

/** A block of 40 × 100 × 150 mm at 20 m/min, 60 a minute: 333 mm from front to front. */
describe('what cannot be true of the world', () => {
  it('packs from front to front: 20 m/min and 60 a minute are 333.3 mm, two lanes twice that', () => {
    expect(pitchMm(samplePoint())).toBeCloseTo(333.33, 2)
    expect(pitchMm(samplePoint({ lanes: 2 }))).toBeCloseTo(666.67, 2)
    expect(pitchMm(samplePoint({ packsPerMin: null }))).toBeNull()
  })
  it('is nothing in a sound brief, and nothing of what only just fits', () => {
    expect(said(samplePoint())).toEqual([])
    expect(said(samplePoint({ packsPerMin: 100, lengthMm: 200, massG: 700 }))).toEqual([])
    expect(said(samplePoint({}, { grainMm: 40, structure: 'granular' }))).toEqual([])
    const volumeCm3 = (40 * 100 * 150) / 1000
    expect(said(samplePoint({ massG: volumeCm3 * 1.056 * 1.099 }))).toEqual([])
    expect(said(samplePoint({ parts: [{ material: 'pp', mm: 20, place: 'wall' }] }))).toEqual([])
    expect(said(samplePoint({ stage: 'loose', packsPerMin: 600 }))).toEqual([])
  })
  it('packs overlap: 101 a minute of 200 mm at 20 m/min leave 198', () => {
    expect(said(samplePoint({ packsPerMin: 101, lengthMm: 200 }))).toEqual([
      'points.0.packsPerMin: packs overlap: 101 per minute at 20 m/min in 1 lane leave 198 mm from front to front for packs 200 mm long; at most 100 per minute are possible',
    ])
    expect(said(samplePoint({ packsPerMin: 230, lengthMm: 180, lanes: 2 }))[0]).toMatch(
      /in 2 lanes leave 174 mm .* at most 222.2 per minute/,
    )
  })
  it('a grain larger than the smallest side; of plates larger than the height', () => {
    expect(said(samplePoint({}, { grainMm: 41, structure: 'granular' }))).toEqual([
      'product.grainMm: a grain of 41 mm does not fit a pack whose smallest side is 40 mm; at most 40 mm is allowed',
    ])
    const own = { product: { grainMm: 41 } }
    expect(said(samplePoint({}, { grainMm: 41, structure: 'granular' }), own)[0]).toMatch(
      /^points.0.product.grainMm: /,
    )
    const narrow = { widthMm: 30 }
    expect(said(samplePoint(narrow, { grainMm: 35, structure: 'plates' }))).toEqual([])
    expect(said(samplePoint(narrow, { grainMm: 35, structure: 'granular' }))).toHaveLength(1)
    expect(
      said(samplePoint({ lengthMm: 30, packsPerMin: null }, { grainMm: 35, structure: 'granular' })),
    ).toHaveLength(1)
  })
  it('more mass than the box holds: 600 cm³ of 1.056 are 634 g, of a cylinder 498', () => {
    expect(said(samplePoint({ massG: 700 }))).toEqual([
      'points.0.massG: 700 g does not fit 40 × 100 × 150 mm of this food; at most about 634 g is possible',
    ])
    expect(said(samplePoint({ massG: 600, outline: 'cylinder' }))[0]).toMatch(/at most about 498 g/)
  })
  it('a stream wider or higher than the pipe it runs in; a belt knows no pipe', () => {
    const stream = { heightMm: 60, widthMm: 60, packsPerMin: null, pipeDiameterMm: 60 }
    for (const stage of ['pumped', 'free-fall'] as const) {
      expect(said(samplePoint({ ...stream, stage }))).toEqual([])
      expect(said(samplePoint({ ...stream, stage, widthMm: 61 }))).toEqual([
        'points.0.widthMm: a stream 61 mm wide does not fit its pipe of 60 mm; allowed here: 1 to 60 mm',
      ])
      expect(said(samplePoint({ ...stream, stage, heightMm: 80 }))).toEqual([
        'points.0.heightMm: a stream 80 mm high does not fit its pipe of 60 mm; allowed here: 1 to 60 mm',
      ])
      expect(said(samplePoint({ ...stream, stage, heightMm: 80, pipeDiameterMm: null }))).toEqual([])
    }
    for (const stage of ['packed', 'loose'] as const)
      expect(said(samplePoint({ ...stream, stage, widthMm: 200 }))).toEqual([])
  })
  it('a layer of more than half the pack', () => {
    const parts = [
      { material: 'pp', mm: 1, place: 'wall' },
      { material: 'pp', mm: 21, place: 'base' },
    ] as const
    expect(said(samplePoint({ parts: [...parts] }))).toEqual([
      'points.0.parts.1.mm: a layer of 21 mm is more than half the pack; at most 20 mm is allowed',
    ])
    expect(
      said(samplePoint({ widthMm: 30, parts: [{ material: 'pp', mm: 16, place: 'wall' }] })),
    ).toHaveLength(1)
  })
})

const FLOW = [{ step: 'The washing' }, { step: 'slicing', entersHere: ['metal'] }, { step: 'packing' }]
const flowing = (over: object, contaminant: object = {}) =>
  sampleBrief({
    contaminants: [{ material: 'ss316', mustFindMm: 3, ...contaminant }],
    flow: FLOW,
    points: [{ name: 'end', ...over }],
  })

describe('where a point stands and where a piece enters', () => {
  it.each([
    [{ name: 'washing' }, 0],
    [{ name: ' Slicing ' }, 1],
    [{ name: 'after the washing' }, 0.5],
    [{ name: 'before packing' }, 1.5],
    [{ name: 'somewhere', afterStep: 'The washing' }, 0.5],
    [{ name: 'packing', afterStep: 'slicing' }, 1.5],
    [{ name: 'the packing' }, 2],
    [{ name: 'nowhere' }, null],
  ])('%j stands at %s', (point, at) => {
    expect(stepOfPoint(flowing(point), 0)).toBe(at)
  })
  it('every way in, in the order of the flow; entries alone where they are given, with their shares', () => {
    expect(waysIn(flowing({}), 0)).toEqual([{ step: 'slicing', at: 1, share: null }])
    expect(waysIn(flowing({}, { entersAt: 'packing' }), 0)).toEqual([
      { step: 'slicing', at: 1, share: null },
      { step: 'packing', at: 2, share: null },
    ])
    const entries = [{ step: 'packing', share: 0.3 }, { step: 'The washing' }]
    expect(waysIn(flowing({}, { entries }), 0)).toEqual([
      { step: 'The washing', at: 0, share: null },
      { step: 'packing', at: 2, share: 0.3 },
    ])
    expect(waysIn(sampleBrief(), 0)).toEqual([])
  })
  it('glass of the jar comes with the jar, behind every point before filling on its line', () => {
    const wall = [{ material: 'glass_container', mm: 2.5, place: 'wall' }]
    const jar = {
      name: 'jars',
      stage: 'packed',
      heightMm: 95,
      widthMm: 68,
      lengthMm: 68,
      speedMPerMin: 20,
      parts: wall,
    }
    const pipe = {
      name: 'pipe',
      stage: 'pumped',
      pipeDiameterMm: 63,
      massG: null,
      packsPerMin: null,
      parts: [],
      lengthMm: 63,
      widthMm: 63,
      heightMm: 63,
    }
    const brief = (line: string, jarLine: string, material = 'glass_container') =>
      sampleBrief({
        product: { food: 'tomato_sauce' },
        contaminants: [{ material, mustFindMm: 3 }],
        points: [
          { ...pipe, line },
          { ...jar, line: jarLine },
        ],
      })
    expect(entersBehind(brief('', ''), 0, 0)).toBe(true)
    expect(entersBehind(brief('a', 'a'), 0, 0)).toBe(true)
    expect(entersBehind(brief('a', ''), 0, 0)).toBe(true)
    expect(entersBehind(brief('', 'b'), 0, 0)).toBe(true)
    expect(entersBehind(brief('a', 'b'), 0, 0)).toBeNull()
    expect(entersBehind(brief('', '', 'glass_float'), 0, 0)).toBeNull()
    expect(entersBehind(brief('', '', 'steel'), 0, 0)).toBeNull()
    expect(entersBehind(brief('', ''), 0, 1)).toBeNull()
  })
})

describe('what an insert is by its name', () => {
  it.each([
    ['plastic toy with metal spring', 'iron'],
    ['paper clip', 'iron'],
    ['RFID label', 'metal'],
    ['card with aluminium foil window', 'metal'],
    ['plastic clip', 'no metal'],
    ['non-metallic tag of paper', 'no metal'],
    ['card without any metal', 'no metal'],
    ['metal-free clip', 'no metal'],
    ['twist tie', 'unknown'],
    ['spoon', 'unknown'],
    ['wooden spoon', 'no metal'],
  ])('%s: %s', (name, kind) => {
    expect(insertKind(name)).toBe(kind)
  })
  it('hides from x-rays where it is of metal that can be 0.3 mm thick', () => {
    expect(['metal clip', 'plastic clip', 'twist tie'].map(hidesFromXrays)).toEqual([true, false, false])
  })
})

describe('where a machine can stand', () => {
  const stages: readonly Stage[] = ['packed', 'loose', 'pumped', 'free-fall']
  const coil = (arrangement?: 'tunnel' | 'pipe' | 'free-fall') =>
    stages.filter((stage) =>
      standsAt(
        { id: 'c', family: 'coil', frequenciesKHz: [300], ...(arrangement ? { arrangement } : {}) },
        stage,
      ),
    )
  it('a tunnel at belts, a pipe coil in a pipe, a drop coil in a fall, everything else anywhere', () => {
    expect(coil()).toEqual(['packed', 'loose'])
    expect(coil('tunnel')).toEqual(['packed', 'loose'])
    expect(coil('pipe')).toEqual(['pumped'])
    expect(coil('free-fall')).toEqual(['free-fall'])
    expect(stages.every((stage) => standsAt({ id: 's', family: 'sieve' }, stage))).toBe(true)
  })
  it('counts those of the list for the stage, or those named that can stand there', () => {
    const listed = [...archetypes.values()].filter((one) => one.stages.includes('pumped')).length
    expect(countAt([], 'pumped')).toBe(listed)
    const own: Machine = { id: 'own', family: 'coil', frequenciesKHz: [300], arrangement: 'pipe' }
    expect(countAt(['coil-pipe', 'xray-single', own], 'pumped')).toBe(2)
    expect(countAt(['coil-pipe', 'xray-single', own], 'packed')).toBe(1)
  })
})

describe('what a brief leaves open', () => {
  const product: ProductInput = { food: 'cheddar' }
  const filled = (input: object, index = 0) => {
    const { point, assumed, problems } = fillPoint(input as never, index, product)
    return {
      point,
      assumed: assumed.map(({ path, value, range }) => [path, value, range]),
      problems: problems.map(({ path, message }) => `${path}: ${message}`),
    }
  }
  it('of a pack on a belt is its name, size, shape, hours and false rejects, each assumed with its range', () => {
    const { point, assumed, problems } = filled({ heightMm: 40, speedMPerMin: 20 }, 1)
    expect(problems).toEqual([])
    expect(assumed.filter(([path]) => (path as string).startsWith('points.'))).toEqual([
      ['points.1.stage', 'packed', null],
      ['points.1.widthMm', 150, [60, 300]],
      ['points.1.lengthMm', 200, [80, 300]],
      ['points.1.outline', 'box', null],
      ['points.1.name', 'point 2', null],
      ['points.1.hoursPerDay', 16, [8, 24]],
      ['points.1.falseRejectsPerPack', 0.001, [0.0001, 0.005]],
    ])
    expect(point).toMatchObject({
      heightMm: 40,
      filledMm: 40,
      massG: null,
      parts: [],
      inserts: [],
      packsPerMin: null,
      kgPerHour: null,
      lanes: 1,
      checkIntervalMin: null,
      reactMin: null,
      line: '',
      afterStep: '',
      reject: null,
      productSignal: null,
    })
  })
  it('of a belt of bare food is 400 mm of width and length, in a pipe its diameter, in a fall the height', () => {
    expect(filled({ stage: 'loose', heightMm: 30, speedMPerMin: 20 }).point).toMatchObject({
      widthMm: 400,
      lengthMm: 400,
    })
    expect(filled({ stage: 'pumped', pipeDiameterMm: 63, speedMPerMin: 20 }).point).toMatchObject({
      heightMm: 63,
      widthMm: 63,
      lengthMm: 63,
    })
    expect(filled({ stage: 'free-fall', heightMm: 90, speedMPerMin: 90 }).point).toMatchObject({
      widthMm: 90,
      lengthMm: 90,
    })
  })
  it('height and speed are asked for, with their units', () => {
    expect(filled({}).problems).toEqual([
      'points.0.heightMm: give the height of the food in mm',
      'points.0.speedMPerMin: give the speed in m/min',
    ])
    expect(filled({ stage: 'packed', pipeDiameterMm: 63 }).problems).toHaveLength(2)
  })
  it('glass has 0.3 mm of unevenness, other parts none; a food or an unknown word is no packaging', () => {
    const wall = (material: string, more = {}) =>
      filled({ heightMm: 40, speedMPerMin: 20, parts: [{ material, mm: 1, place: 'wall', ...more }] })
    expect(wall('glass_container').point!.parts[0]!.unevennessMm).toBe(0.3)
    expect(wall('glass_container').assumed).toContainEqual([
      'points.0.parts.0.unevennessMm',
      0.3,
      [0.2, 0.45],
    ])
    expect(wall('glass_container', { unevennessMm: 0.1 }).point!.parts[0]!.unevennessMm).toBe(0.1)
    expect(wall('pp').point!.parts[0]!.unevennessMm).toBeUndefined()
    expect(wall('cheddar').problems[0]).toMatch(
      /^points.0.parts.0.material: "cheddar" is not a listed packaging/,
    )
    expect(wall('alumnium').problems[0]).toContain('did you mean aluminium?')
  })
  it('what the mass says of height and packing is assumed, a tenth either way', () => {
    const tray = {
      heightMm: 40,
      widthMm: 100,
      lengthMm: 150,
      speedMPerMin: 20,
      massG: 400,
      parts: [{ material: 'pp', mm: 0.5, place: 'tray' }],
    }
    const { point, assumed } = filled(tray)
    const high = (400 * 1000) / (1.056 * 100 * 150)
    expect(point!.filledMm).toBeCloseTo(high, 2)
    const [, value, range] = assumed.find(([path]) => path === 'points.0.filledMm')!
    expect([value, ...(range as readonly number[])].map((mm) => Number((mm as number).toFixed(1)))).toEqual([
      25.3, 22.7, 27.8,
    ])
    const bag = fillPoint(
      { heightMm: 50, widthMm: 180, lengthMm: 250, speedMPerMin: 20, massG: 1000 } as never,
      0,
      { food: 'almond' },
    )
    expect(bag.point!.product.packing).toBeCloseTo(
      1000000 / (bag.point!.product.densityGPerCm3 * 50 * 180 * 250),
      3,
    )
    expect(bag.assumed.filter(({ path }) => path.endsWith('.packing')).map(({ path }) => path)).toEqual([
      'points.0.product.packing',
    ])
  })
})

describe('a food where little is said', () => {
  const read = (input: ProductInput, stage: Stage = 'packed') => fillProduct(input, 'product', stage)
  const assumedOf = (input: ProductInput, stage: Stage = 'packed') =>
    Object.fromEntries(
      read(input, stage).assumed.map(({ path, value, range }) => [path.slice(8), [value, range]]),
    )
  const custom = {
    food: 'custom',
    composition: { waterPct: 60, proteinPct: 20, fatPct: 10, carbohydratePct: 8, ashPct: 2 },
  } as const
  const stopped = (input: ProductInput) =>
    read(input).problems.map(({ path, message }) => `${path}: ${message}`)
  it('takes structure, packing, grain, unevenness from the table, bare pieces 1 mm of it', () => {
    expect(assumedOf({ food: 'almond' })).toMatchObject({
      structure: ['granular', null],
      unevennessMm: [0.5, [0.2, 1.5]],
      temperatureC: [20, [2, 30]],
      ironMgPerKg: [0, null],
      voidFree: [false, null],
    })
    expect(assumedOf({ food: 'almond' }, 'loose').unevennessMm).toEqual([1, [0.2, 1.5]])
    expect(assumedOf({ food: 'cheddar' }, 'loose').unevennessMm).toEqual([0.2, [0.2, 2]])
    expect(assumedOf({ food: 'bread' }).unevennessMm).toEqual([2.4, [1.2, 5]])
    expect(assumedOf({ food: 'bread', structure: 'granular', grainMm: 2 }).unevennessMm).toEqual([
      0.5,
      [0.2, 1.5],
    ])
    expect(assumedOf({ food: 'peas_frozen' }).temperatureC).toEqual([-18, [-25, -5]])
  })
  it('a food of one’s own is solid at the density of its parts, ± 5 %, and needs its five parts', () => {
    expect(assumedOf(custom).structure).toEqual(['solid', null])
    const [density, range] = assumedOf(custom).densityGPerCm3!
    expect((range as readonly number[])[0]! / (density as number)).toBeCloseTo(0.95, 2)
    expect((range as readonly number[])[1]! / (density as number)).toBeCloseTo(1.05, 2)
    expect(assumedOf({ ...custom, structure: 'powder', grainMm: 0.2 }).packing).toEqual([0.55, [0.35, 0.68]])
    expect(read({ ...custom, densityGPerCm3: 1.3 }).product!.densityGPerCm3).toBe(1.3)
    expect(stopped({ food: 'custom' })).toEqual([
      'product.composition: a custom food needs its composition (water, protein, fat, carbohydrate, ash in %)',
    ])
    const off = (waterPct: number) => stopped({ ...custom, composition: { ...custom.composition, waterPct } })
    expect(off(63)).toEqual([])
    expect(off(57)).toEqual([])
    expect(off(63.1)[0]).toContain('add up to 103.1 %; they must add up to 100 % (97 to 103)')
    expect(off(56.9)).toHaveLength(1)
  })
  it('stops at what cannot be read', () => {
    expect(stopped({ food: 'almnd' })[0]).toMatch(
      /^product.food: "almnd" is not a listed food; did you mean almond\?/,
    )
    expect(stopped({ food: 'steel' })).toHaveLength(1)
    expect(stopped({ food: 'kohlrabi' })[0]).toMatch(
      /"kohlrabi" is not a listed food\. Listed: almond, .*potato.*\. Any other is "custom"/,
    )
    expect(stopped({ food: 'cheddar', packing: 0.9 })[0]).toBe(
      'product.packing: a solid food fills its space: packing must be 1 or left out; 0.9 was given',
    )
    expect(stopped({ food: 'cheddar', packing: 1 })).toEqual([])
    expect(stopped({ food: 'cheddar', structure: 'granular' })[0]).toBe(
      'product.grainMm: a granular food needs its grain size in mm',
    )
    expect(stopped({ food: 'cheddar', structure: 'plates' })[0]).toBe(
      'product.grainMm: a plates food needs its plate thickness in mm',
    )
  })
  it('only what flows can be stiff', () => {
    expect(read({ food: 'honey', structure: 'liquid' }).product!.stiff).toBe(true)
    expect(read({ food: 'soup', structure: 'liquid' }).product!.stiff).toBe(false)
    expect(read({ food: 'soup', structure: 'pieces-in-liquid', stiff: true }).product!.stiff).toBe(true)
    expect(read({ food: 'cheddar', stiff: true }).product!.stiff).toBe(false)
    expect(parseBrief({}).ok).toBe(false)
  })
})
