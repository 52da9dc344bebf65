import { describe, expect, test } from 'vitest'
import { assessCoil } from '../../src/coil/assess-coil.ts'
import { conductingParts, insideFactor, layerResponse } from '../../src/coil/pack/packaging.ts'
import { ironTurnsAtMm } from '../../src/coil/piece/iron-turns.ts'
import { pieceOf } from '../../src/coil/piece/piece.ts'
import { magnitude } from '../../src/numerics/complex.ts'
import { conductingLayers, electricalSources, metals } from '../../src/reference/electrical.ts'
import { materials } from '../../src/reference/index.ts'
import { fixture, sampleContaminant, samplePoint } from './sample-point.ts'

describe('the table of metals', () => {
  test('covers every metal of the catalogue; what is listed here only are test-piece steels', () => {
    for (const material of materials.values()) {
      if (material.kind === 'metal') expect(metals.has(material.id), material.id).toBe(true)
    }
    expect([...metals.keys()].filter((id) => !materials.has(id)).sort()).toEqual(['chrome_steel', 'ss440'])
    expect([...conductingLayers.keys()].every((id) => materials.has(id))).toBe(true)
  })

  test('has values inside their ranges and known sources', () => {
    for (const row of metals.values()) {
      expect(row.conductivityRange[0]).toBeLessThanOrEqual(row.conductivitySPerM)
      expect(row.conductivityRange[1]).toBeGreaterThanOrEqual(row.conductivitySPerM)
      expect(row.permeabilityRange[0]).toBeLessThanOrEqual(row.relativePermeability)
      expect(row.permeabilityRange[1]).toBeGreaterThanOrEqual(row.relativePermeability)
      for (const id of row.sources) expect(electricalSources.has(id), id).toBe(true)
    }
  })

  test('holds the constants the independent check values were computed with', () => {
    const checked = fixture<{ metals: Record<string, { sigma: number; mu_r: number }> }>('responses').metals
    for (const [id, name] of [
      ['steel', 'mildsteel'],
      ['ss304', 'ss304'],
      ['ss316', 'ss316'],
      ['ss430', 'ss430'],
      ['brass', 'brass'],
      ['aluminium', 'aluminium'],
      ['copper', 'copper'],
      ['lead', 'lead'],
      ['carbide', 'wc_co'],
      ['ferrite', 'ferrite'],
      ['chrome_steel', 'chromesteel'],
    ] as const) {
      expect(metals.get(id)!.conductivitySPerM).toBe(checked[name]!.sigma)
      expect(metals.get(id)!.relativePermeability).toBe(checked[name]!.mu_r)
    }
  })
})

describe('how metals compare', () => {
  const sizes = (ids: string[], conductivitySPerM: number, f: number) =>
    assessCoil({
      machine: { id: 'coil', family: 'coil', frequenciesKHz: [f] },
      point: samplePoint({}, { conductivitySPerM }),
      contaminants: ids.map((id) => sampleContaminant(id)),
    }).findings.map(({ expectedMm }) => expectedMm!)

  test('304 is found within 2 % of 316; a bearing ball within 5 % of mild steel', () => {
    for (const sigma of [0, 0.5]) {
      const [a, b, ball, steel] = sizes(['ss304', 'ss316', 'chrome_steel', 'steel'], sigma, 300)
      expect(Math.abs(a! / b! - 1)).toBeLessThan(0.02)
      expect(Math.abs(ball! / steel! - 1)).toBeLessThan(0.05)
    }
  })

  test('aluminium is found within 1 % of brass at 850 kHz and 5 to 10 % smaller at 100 kHz, dry', () => {
    const ratio = (f: number) => {
      const [aluminium, brass] = sizes(['aluminium', 'brass'], 0, f)
      return aluminium! / brass!
    }
    expect(Math.abs(ratio(850) - 1)).toBeLessThan(0.01)
    expect(ratio(100)).toBeLessThan(0.95)
    expect(ratio(100)).toBeGreaterThan(0.9)
  })

  test('common practice, no source: 150 to 200 mm, dry, 0.8–1.0 iron, 1.0–1.2 brass, 1.2–1.5 mm 316 at 175 mm', () => {
    const [iron, brass, stainless] = sizes(['steel', 'brass', 'ss316'], 0, 850)
    for (const [size, from, to] of [
      [iron, 0.8, 1],
      [brass, 1, 1.2],
      [stainless, 1.2, 1.5],
    ] as const) {
      expect(size!).toBeGreaterThan(from)
      expect(size!).toBeLessThan(to)
    }
  })

  // The residual is set on other usual settings than this one; the band is met within 10 %, not to a tenth of a mm.
  test('common practice, no source: wet pack at 300 kHz, 1.5–2.0 iron, 2.0–2.5 brass, 2.5–3.5 mm 316, within 10 %', () => {
    const [iron, brass, stainless] = sizes(['steel', 'brass', 'ss316'], 0.5, 300)
    for (const [size, from, to] of [
      [iron, 1.5, 2],
      [brass, 2, 2.5],
      [stainless, 2.5, 3.5],
    ] as const) {
      expect(size!).toBeGreaterThanOrEqual(0.9 * from)
      expect(size!).toBeLessThanOrEqual(1.1 * to)
    }
  })

  test('the reactive answer of mild steel peaks at 4.0 mm at 850 kHz and 6.8 mm at 300 kHz', () => {
    const steel = pieceOf(sampleContaminant('steel'))!
    expect(ironTurnsAtMm(steel, 850_000)).toBeCloseTo(4, 1)
    expect(ironTurnsAtMm(steel, 300_000)).toBeCloseTo(6.8, 1)
  })
})

describe('conducting parts of a pack', () => {
  test('foil by thickness, film by its sheet resistance, an entered sheet resistance before both', () => {
    const layers = conductingParts([
      { material: 'aluminium_foil', mm: 0.007, place: 'lid' },
      { material: 'metallised_film', mm: 0.02, place: 'wrap' },
      { material: 'metallised_film', mm: 0.02, place: 'wrap', sheetOhmPerSquare: 2 },
      { material: 'pe', mm: 0.05, place: 'wrap' },
      { material: 'carton', mm: 0.5, place: 'sleeve' },
    ])
    expect(layers.map(({ kind }) => kind)).toEqual(['one sheet', 'two faces', 'two faces'])
    expect(layers[0]!.conductanceS).toBeCloseTo(245, 9)
    expect(layers[1]!.mostConductanceS).toBeGreaterThan(layers[1]!.conductanceS)
    expect(layers[2]!.conductanceS).toBe(0.5)
    expect(layers[2]!.mostConductanceS).toBe(0.5)
  })

  test('a closed tube weakens a piece inside twice, on the way out and back: T²', () => {
    const [sleeve] = conductingParts([{ material: 'aluminium_foil', mm: 0.009, place: 'sleeve' }])
    const pack = { widthM: 0.1, heightM: 0.03, sensedLengthM: 0.1, openingHeightM: 0.175 }
    // computed independently: |T²| 0.33 at 50 kHz and 0.013 at 300 kHz for 9 µm of foil around 100 × 30 mm
    for (const [f, share] of [
      [50e3, 0.33],
      [300e3, 0.013],
    ] as const) {
      const layer = layerResponse(sleeve!, sleeve!.conductanceS, pack, f)
      expect(Math.abs(magnitude(insideFactor([layer])) - share)).toBeLessThan(0.005)
      expect(magnitude(insideFactor([layer, layer]))).toBeCloseTo(magnitude(insideFactor([layer])) ** 2, 12)
    }
  })
})
