import { describe, expect, it } from 'vitest'
import type { FactSheet } from '../../../src/advice/facts/fact-sheet.ts'
import { factsForBrief, factsForPoint } from '../../../src/advice/facts/facts.ts'
import { insertKind } from '../../../src/brief/insert-kind.ts'
import { materials } from '../../../src/reference/index.ts'
import { sampleBrief } from '../sample.ts'

const read = (sheet: FactSheet) => Object.fromEntries(sheet.facts.map(({ id, value }) => [id, value]))
const part = (material: string, mm: number, place: string) => ({ material, mm, place })
const pack = (...parts: ReturnType<typeof part>[]) =>
  read(factsForPoint(sampleBrief({ points: [{ parts }] }), 0, materials))
const withInserts = (...inserts: string[]) =>
  read(factsForPoint(sampleBrief({ points: [{ inserts }] }), 0, materials))

describe('an insert by its name', () => {
  it.each([
    ['clip', 'metal'],
    ['aluminium clip', 'metal'],
    ['metal-ring', 'metal'],
    ['plastic-clip', 'no metal'],
    ['plastic clip', 'no metal'],
    ['oxygen-absorber', 'iron'],
    ['oxygen scavenger, iron-free', 'no metal'],
    ['staple', 'iron'],
    ['wire tie', 'iron'],
    ['desiccant', 'no metal'],
    ['paper leaflet', 'no metal'],
    ['wooden stick', 'no metal'],
    ['plastic toy with metal spring', 'iron'],
    ['paper clip', 'iron'],
    ['RFID label', 'metal'],
    ['card with aluminium foil window', 'metal'],
    ['metal-free toy with a steel spring', 'iron'],
    ['twist tie', 'unknown'],
    ['label', 'no metal'],
    ['spoon', 'unknown'],
    ['toy', 'unknown'],
  ])('%s: %s', (name, kind) => {
    expect(insertKind(name)).toBe(kind)
  })
  it('counts by kind', () => {
    expect(withInserts('clip', 'oxygen-absorber', 'plastic clip', 'spoon')).toMatchObject({
      'pack.insertCount': 4,
      'pack.metalInserts': 2,
      'pack.ironInserts': 1,
      'pack.plainInserts': 1,
      'pack.unclearInserts': 1,
      'pack.bringsMetal': true,
      'pack.metalNames': 'clip, oxygen-absorber',
    })
    expect(withInserts('spoon')['pack.bringsMetal']).toBe(false)
  })
})

describe('where a pack carries metal', () => {
  it('tells a foil lid from foil around the food', () => {
    expect(pack(part('aluminium_foil', 0.035, 'lid'), part('ps', 0.5, 'wall'))).toMatchObject({
      'pack.foilPlace': 'lid',
      'pack.metalClosure': false,
    })
    expect(pack(part('aluminium_foil', 0.035, 'lid'), part('aluminium', 0.09, 'tray'))).toMatchObject({
      'pack.foilPlace': 'around',
      'pack.metalNames': 'aluminium foil as lid, aluminium, wrought as tray',
    })
    expect(pack(part('metallised_film', 0.03, 'wrap'))).toMatchObject({
      'pack.foilPlace': 'none',
      'pack.bringsMetal': true,
      'pack.magneticParts': 0,
    })
  })
  it('tells a metal closure from a plain one', () => {
    expect(pack(part('glass_container', 2.5, 'wall'), part('steel', 0.2, 'closure'))).toMatchObject({
      'pack.metalClosure': true,
      'pack.plainClosure': false,
      'pack.magneticParts': 1,
    })
    expect(pack(part('pet', 0.4, 'wall'), part('aluminium', 0.2, 'closure'))).toMatchObject({
      'pack.metalClosure': true,
      'pack.magneticParts': 0,
    })
    expect(pack(part('pet', 0.4, 'wall'), part('pp', 1.5, 'closure'))).toMatchObject({
      'pack.metalClosure': false,
      'pack.plainClosure': true,
      'pack.bringsMetal': false,
    })
  })
  it('counts the points at which the food is still open to a coil', () => {
    const foil = part('aluminium_foil', 0.009, 'wrap')
    const open = (points: Record<string, unknown>[]) =>
      read(factsForBrief(sampleBrief({ points }), materials))['brief.openPoints']
    expect(open([{ parts: [foil] }])).toBe(0)
    expect(open([{ parts: [] }])).toBe(1)
  })
})
