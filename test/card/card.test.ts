import { describe, expect, it } from 'vitest'
import { CardError, cardOf } from '../../src/card/card.ts'
import type { Brief } from '../../src/contract/index.ts'
import { decodePng } from '../charts/decode-png.ts'
import { sampleBrief } from '../xray/image/sample.ts'

const cheese = sampleBrief('cheddar')
const nuts = sampleBrief('hazelnut')
const quick = { equipment: ['xray-dual'] }

describe('a simulated test card', () => {
  it('is the same, byte for byte, under the same seed, and another under another', () => {
    const bytes = (seed: number) =>
      cardOf(nuts, { ...quick, seed }).machines[0]!.pictures.map((p) => Buffer.from(p.png).toString('base64'))
    const first = bytes(3)
    expect(bytes(3)).toEqual(first)
    expect(bytes(4)).not.toEqual(first)
  })

  it('shows each machine two pictures of the same packs, as PNG', () => {
    const card = cardOf(cheese, { seed: 2 })
    expect(card.machines.map((m) => m.equipment)).toEqual(['xray-single', 'xray-dual'])
    const kinds = card.machines.map((m) => m.pictures.filter((p) => p.sheet === 0).map((p) => p.kind))
    expect(kinds).toEqual([
      ['plain', 'background flattened'],
      ['plain', 'food cancelled'],
    ])
    for (const picture of card.machines.flatMap((m) => m.pictures)) {
      const { widthPx, heightPx, texts } = decodePng(picture.png)
      expect({ widthPx, heightPx }).toEqual({ widthPx: picture.widthPx, heightPx: picture.heightPx })
      expect(texts.Title).toBe('simulated, seed 2')
    }
  })

  it('says in every picture and its words that it is simulated, and by which seed', () => {
    for (const picture of cardOf(cheese, { seed: 17 }).machines.flatMap((m) => m.pictures)) {
      expect(picture.alt).toMatch(/^Simulated/)
      expect(decodePng(picture.png).texts.Title).toBe('simulated, seed 17')
    }
  })

  it('numbers the pieces through, the same for machines that look the same way', () => {
    const { machines } = cardOf(nuts, { seed: 1 })
    const lists = machines.map((m) => m.sheets.flatMap((s) => s.pieces))
    for (const list of lists) {
      expect(list.map((p) => p.number)).toEqual(list.map((_, i) => i + 1))
      expect(list.map(({ u, v, words }) => [u, v, words])).toEqual(
        lists[0]!.map(({ u, v, words }) => [u, v, words]),
      )
      expect(list.filter((p) => p.found).every((p) => p.strength! > 1)).toBe(true)
    }
    machines.forEach((m, i) => {
      expect(m.sheets.flatMap((s) => s.lines).at(-1)!.to).toBe(lists[i]!.length)
    })
  })

  it('has one grey scale for all machines that look the same way, in food', () => {
    const { machines } = cardOf(nuts, { seed: 1 })
    expect(new Set(machines.map((m) => JSON.stringify(m.scaleMm))).size).toBe(1)
    const { white, black } = machines[0]!.scaleMm!
    const { product, filledMm } = nuts.points[0]!
    expect(white).toBeLessThan(product.packing * filledMm)
    expect(black).toBeGreaterThan(product.packing * filledMm)
  })

  it('measures what taking the food off does: it helps in coarse grain, not in an even block', () => {
    const gain = (brief: Brief) => cardOf(brief, { ...quick, seed: 1 }).machines[0]!.foodTakenOffGain!
    expect(gain(nuts)).toBeGreaterThan(1.2)
    expect(gain(cheese)).toBeLessThan(1)
  })

  it('stands where clean packs put it, when asked and where that is higher than computed; says so', () => {
    const options = { equipment: ['xray-single'], seed: 1 }
    const beds = [cheese, nuts].map((brief) => {
      const computed = cardOf(brief, options)
      const taught = cardOf(brief, { ...options, taughtPacks: 10 })
      expect(taught.machines[0]!.threshold!).toBeGreaterThanOrEqual(computed.machines[0]!.threshold!)
      expect(computed.notes.join()).toContain('computed, not taught pack by pack')
      expect(taught.notes.join()).toContain('what 10 clean packs teach')
      return taught.machines[0]!.threshold!
    })
    // In grain the largest answers of clean packs lie far above those of an even block.
    expect(beds[1]!).toBeGreaterThan(1.3 * beds[0]!)
  })

  it.each([
    ['cheddar', cheese],
    ['hazelnuts', nuts],
  ])('finds the largest pieces and misses the smallest: %s', (_name, brief) => {
    const { runs } = cardOf(brief, {
      ...quick,
      sizesMm: [
        [0.1, 0.15, 1.5, 2],
        [0.3, 0.5, 6, 7],
      ],
    }).machines[0]!
    for (const material of ['ss304', 'glass_container']) {
      const found = runs.filter((run) => run.material === material).map((run) => run.found)
      expect(found).toEqual([0, 0, 1, 1])
    }
  })

  it('counts repeated runs and clean packs', () => {
    const { runs } = cardOf(cheese, { ...quick, runs: 3, cleanPacks: 2, sizesMm: [[2], [6]] }).machines[0]!
    expect(runs.map((run) => [run.material, run.runs])).toEqual([
      ['ss304', 3],
      ['glass_container', 3],
      ['', 2],
    ])
    expect(runs[0]!.found).toBe(3)
    expect(runs[2]).toMatchObject({ shape: '', sizeMm: null, placement: '' })
  })

  it('puts the pieces on the pack when asked, where light plastics gain', () => {
    const plastic: Brief = {
      ...cheese,
      contaminants: [{ ...cheese.contaminants[1]!, material: 'pp' }],
    }
    const found = (placement: 'inside' | 'outside') =>
      cardOf(plastic, { ...quick, placement }).machines[0]!.runs.reduce((sum, run) => sum + run.found, 0)
    expect(found('inside')).toBe(0)
    expect(found('outside')).toBeGreaterThan(0)
  })

  it('says why a machine is left out', () => {
    const high = sampleBrief('cheddar', { heightMm: 480 })
    const card = cardOf(high, quick)
    expect(card.machines[0]).toMatchObject({ pictures: [], runs: [] })
    expect(card.machines[0]!.leftOut).toMatch(/too high: 480 mm/)
  })

  it('refuses a point or a machine that is not there', () => {
    expect(() => cardOf(cheese, { point: 1 })).toThrow(CardError)
    expect(() => cardOf(cheese, { equipment: ['xray-side'] })).toThrow(/has xray-single, xray-dual/)
  })
})
