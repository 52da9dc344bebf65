import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import { SAMPLE_MACHINE } from '../advice/sample.ts'

const point = { heightMm: 40, widthMm: 150, lengthMm: 200, speedMPerMin: 30, packsPerMin: 80 }
const brief = (over: object = {}) => ({
  product: { food: 'almond' },
  points: [point],
  contaminants: [{ material: 'quartz', mustFindMm: 3 }],
  ...over,
})
/** What is said against a brief, each with its field; nothing where it is read. */
const said = (over: object) => {
  const parsed = parseBrief(brief(over))
  return parsed.ok ? [] : parsed.problems.map(({ path, message }) => `${path}: ${message}`)
}
/** What is said against a sound machine with some of its figures changed, or taken away (undefined). */
const LAYER = { scintillator: 'gos', mgPerCm2: 110, swank: 0.8, electronsPerKeV: 20, noiseElectrons: 1500 }
const ofMachine = (over: object) => {
  const whole = Object.entries({
    ...SAMPLE_MACHINE,
    windowsKeV: undefined,
    detectorLayers: [LAYER],
    ...over,
  }).filter(([, value]) => value !== undefined)
  return said({ equipment: [Object.fromEntries(whole)] })
}
const ofPiece = (over: object) => said({ contaminants: [{ material: 'steel', mustFindMm: 1, ...over }] })

describe('a machine of one’s own is refused', () => {
  const windowsKeV = [[20, 40]]
  it('with a range of voltages turned round, not with one voltage from end to end', () => {
    expect(ofMachine({})).toEqual([])
    expect(ofMachine({ kVRange: [80, 40] })).toEqual([
      'equipment.0.kVRange: the lowest voltage comes first; [80, 40] was given',
    ])
    expect(ofMachine({ kVRange: [60, 60] })).toEqual([])
    expect(ofMachine({ kVRange: undefined, kV: 60 })).toEqual([])
    expect(ofMachine({ kVRange: undefined })).toEqual([
      'equipment.0.kV: an x-ray machine needs kV (fixed) or kVRange [lowest, highest], 20 to 150 kV',
    ])
  })
  it('without any current or power, and read with one of the three', () => {
    const none = { mA: undefined, maxPowerW: undefined, maxMA: undefined }
    expect(ofMachine(none)).toEqual(['equipment.0.mA: an x-ray machine needs mA, or maxPowerW, or maxMA'])
    for (const one of [{ mA: 5 }, { maxPowerW: 300 }, { maxMA: 5 }])
      expect(ofMachine({ ...none, ...one })).toEqual([])
  })
  it('without a detector, with two ways of one, or with a window turned round', () => {
    expect(ofMachine({ detectorLayers: undefined })).toEqual([
      'equipment.0.detectorLayers: an x-ray machine needs detectorLayers (one or two) or windowsKeV',
    ])
    expect(ofMachine({ windowsKeV })).toEqual([
      'equipment.0.windowsKeV: give detectorLayers or windowsKeV, not both',
    ])
    expect(ofMachine({ detectorLayers: undefined, windowsKeV })).toEqual([])
    for (const [from, to] of [
      [40, 40],
      [40, 30],
    ])
      expect(ofMachine({ detectorLayers: undefined, windowsKeV: [[from, to]] })).toEqual([
        `equipment.0.windowsKeV.0: a window runs from low to high; [${from}, ${to}] was given`,
      ])
  })
})

describe('a piece is refused', () => {
  it('as a wire without length, or a flake without face', () => {
    expect(ofPiece({ shape: 'wire' })).toEqual(['contaminants.0.lengthMm: a wire needs its length in mm'])
    expect(ofPiece({ shape: 'flake' })).toEqual([
      'contaminants.0.faceMm2: a flake needs the area of its face in mm²',
    ])
  })
  it('with a measure of another shape', () => {
    expect(ofPiece({ lengthMm: 5 })).toEqual([
      'contaminants.0.lengthMm: a sphere has no lengthMm; it belongs to a wire',
    ])
    expect(ofPiece({ shape: 'wire', lengthMm: 5, faceMm2: 4 })).toEqual([
      'contaminants.0.faceMm2: a wire has no faceMm2; it belongs to a flake',
    ])
    expect(ofPiece({ shape: 'flake', lengthMm: 5, faceMm2: 4 })).toEqual([
      'contaminants.0.lengthMm: a flake has no lengthMm; it belongs to a wire',
    ])
  })
})

describe('a line is refused', () => {
  it('with two points of one name; points without a name are told apart by themselves', () => {
    const two = (name?: string) => said({ points: [point, point].map((one) => ({ ...one, name })) })
    expect(two('belt')).toEqual([
      'points.1.name: "belt" names two inspection points; every point needs its own name',
    ])
    expect(two()).toEqual([])
  })
  it('with a machine named twice, unknown, or for none of its stages', () => {
    expect(said({ equipment: ['xray-single', 'xray-single'] })).toEqual([
      'equipment.1: "xray-single" is named twice; every machine needs its own id',
    ])
    expect(said({ equipment: ['xray-singel'] })[0]).toMatch(
      /^equipment\.0: "xray-singel" is not a known archetype; did you mean xray-single\? Known: .*xray-single, /,
    )
    expect(said({ equipment: ['coil-pipe'] })).toEqual([
      'equipment.0: coil-pipe is used at the stages pumped; this brief has packed',
    ])
    expect(said({ equipment: ['xray-single'] })).toEqual([])
  })
})

describe('what is said of a piece is handed on, and what is not is assumed with its reason', () => {
  const read = (contaminant: object) => {
    const parsed = parseBrief(brief({ contaminants: [{ material: 'steel', ...contaminant }] }))
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const assumed = parsed.brief.assumed.filter(({ path }) => path.startsWith('contaminants.0.'))
    return {
      piece: parsed.brief.contaminants[0]!,
      assumed: assumed.map(({ path, label, value, because }) => [path.slice(15), label, value, because]),
    }
  }
  it('all of it', () => {
    const given = {
      shape: 'wire',
      lengthMm: 8,
      placement: 'outside',
      mustFindMm: 0.5,
      basis: 'law',
      severity: 5,
      likelihood: 1,
      foundPerMillionPacks: 2,
      entersAt: 'sifter',
    }
    expect(read(given)).toMatchObject({ piece: given, assumed: [] })
    expect(read({ shape: 'flake', faceMm2: 9, mustFindMm: 1 }).piece).toMatchObject({ faceMm2: 9 })
  })
  it('nothing but its size, or not even that', () => {
    const rest = [
      ['placement', 'placement', 'inside', 'a foreign body may lie anywhere in the food'],
      ['severity', 'severity', 3, 'middle of 1 to 5'],
      ['likelihood', 'likelihood', 3, 'middle of 1 to 5'],
    ]
    const shape = ['shape', 'shape', 'sphere', 'the usual test piece']
    const basis = (word: string) => ['basis', 'basis of the size to find', word, 'not stated']
    expect(read({ mustFindMm: 2 }).assumed).toEqual([shape, basis('customer'), ...rest])
    expect(read({}).assumed).toEqual([shape, basis('best-achievable'), ...rest])
    expect(read({}).piece).toMatchObject({
      lengthMm: null,
      faceMm2: null,
      foundPerMillionPacks: null,
      entersAt: '',
      entries: [],
    })
  })
})
