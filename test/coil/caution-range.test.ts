import { describe, expect, test } from 'vitest'
import { assessCoil, type CoilInput } from '../../src/coil/assess-coil.ts'
import { COIL_PARAMETERS, type CoilParameters, cautiousParameters } from '../../src/coil/parameters.ts'
import type { ProductSignal } from '../../src/contract/brief.ts'
import { sampleContaminant, samplePoint } from './sample-point.ts'

const METALS = ['steel', 'brass', 'ss316']

const findings = (changes: Partial<CoilInput> = {}) =>
  assessCoil({
    machine: { id: 'coil', family: 'coil', frequenciesKHz: [300], use: 'together' },
    point: samplePoint({}, { food: 'chicken_breast', temperatureC: 25 }),
    contaminants: METALS.map((id) => sampleContaminant(id)),
    ...changes,
  }).findings

const withParameters = (changes: Partial<CoilParameters>) =>
  findings({ parameters: { ...COIL_PARAMETERS, ...changes } })

describe('the size that is safe to promise', () => {
  test('takes noise × 1.3, both residuals × 1.5 and leaves the amplitude', () => {
    const cautious = cautiousParameters(COIL_PARAMETERS)
    expect(cautious.noiseM3).toBeCloseTo(1.3 * COIL_PARAMETERS.noiseM3, 20)
    const { block } = COIL_PARAMETERS
    expect(cautious.block).toEqual({
      amplitude: block.amplitude,
      phaseRad: block.phaseRad * 1.5,
      remainder: block.remainder * 1.5,
    })
    expect(cautious.wrapper.phaseRad).toBeCloseTo(0.0075, 12)
    expect(cautious.drySpread).toBe(COIL_PARAMETERS.drySpread)
  })

  test('is the expected size of a machine so much noisier at the top of the conductivity’s range', () => {
    const own = findings()
    const bad = findings({
      parameters: cautiousParameters(COIL_PARAMETERS),
      point: samplePoint({}, { conductivitySPerM: 1.2 }),
    })
    for (const k of [1, 2]) expect(own[k]!.cautiousMm).toBeCloseTo(bad[k]!.expectedMm!, 9)
    expect(own[0]!.cautiousMm!).toBeGreaterThan(bad[0]!.expectedMm!)
  })

  test('names the assumption that alone widens it most', () => {
    for (const finding of findings()) {
      const noise = withParameters({ noiseM3: COIL_PARAMETERS.noiseM3 * 1.3 })[finding.contaminant]!
        .expectedMm!
      const { block } = cautiousParameters(COIL_PARAMETERS)
      const residual = withParameters({ block })[finding.contaminant]!.expectedMm!
      const top = findings({ point: samplePoint({}, { conductivitySPerM: 1.2 }) })[finding.contaminant]!
        .expectedMm!
      const most = Math.max(noise, residual, top)
      const name =
        most === noise ? 'noise' : most === residual ? 'product and pack residual' : 'product conductivity'
      expect(finding.widest).toBe(name)
    }
    const dry = findings({ point: samplePoint({}, { food: 'biscuit' }) })
    expect(dry.map(({ widest }) => widest)).toEqual(['noise', 'noise', 'noise'])
  })

  test('a film of unknown resistance is taken at its best conducting; an entered resistance is not moved', () => {
    const bag = (sheetOhmPerSquare?: number) =>
      findings({
        machine: { id: 'coil', family: 'coil', frequenciesKHz: [100] },
        point: samplePoint(
          {
            parts: [
              {
                material: 'metallised_film',
                mm: 0.03,
                place: 'wrap',
                ...(sheetOhmPerSquare === undefined ? {} : { sheetOhmPerSquare }),
              },
            ],
          },
          { conductivitySPerM: 0 },
        ),
      })
    const unknown = bag()
    const measured = bag(1.2)
    unknown.forEach((finding, k) => {
      expect(finding.expectedMm).toBeCloseTo(measured[k]!.expectedMm!, 9)
      expect(finding.cautiousMm!).toBeGreaterThan(measured[k]!.cautiousMm!)
      expect(finding.cautiousMm).toBeCloseTo(bag(0.57)[k]!.cautiousMm!, 9)
    })
  })

  test('a wire is taken at the worst of its angles, at least at the weaker of two', () => {
    const [wire] = findings({
      contaminants: [sampleContaminant('ss316', { shape: 'wire', lengthMm: 20 })],
    })
    const [bad] = findings({
      parameters: cautiousParameters(COIL_PARAMETERS),
      point: samplePoint({}, { conductivitySPerM: 1.2 }),
      contaminants: [sampleContaminant('ss316', { shape: 'wire', lengthMm: 20 })],
    })
    expect(wire!.cautiousMm!).toBeGreaterThanOrEqual(bad!.expectedMm! - 1e-9)
  })

  test('takes iron at the worst permeability it may have, and promises none where the frequency would not suit', () => {
    const iron = (frequencyKHz: number, conductivitySPerM: number) =>
      findings({
        machine: { id: 'coil', family: 'coil', frequenciesKHz: [frequencyKHz], use: 'together' },
        point: samplePoint({}, { conductivitySPerM }),
      })[0]!
    const low = iron(100, 0.5)
    const high = iron(300, 0.5)
    expect(high.cautiousMm! / high.expectedMm!).toBeGreaterThan(low.cautiousMm! / low.expectedMm!)
    expect(iron(850, 1.2).cautiousMm).toBeNull()
    expect(iron(850, 0).cautiousMm).not.toBeNull()
  })

  test('a reading on the line replaces the assumed residual and narrows the range', () => {
    const at = (productSignal: ProductSignal | null) =>
      findings({ point: samplePoint({ productSignal }, { conductivitySPerM: 0.5 }) })
    const assumed = at(null)
    const { phaseRad, remainder } = COIL_PARAMETERS.block
    const same = at({ amplitudePct: 100 * remainder, phaseDeg: (phaseRad * 180) / Math.PI })
    const twice = at({ amplitudePct: 200 * remainder, phaseDeg: (2 * phaseRad * 180) / Math.PI })
    assumed.forEach((finding, k) => {
      expect(same[k]!.expectedMm).toBeCloseTo(finding.expectedMm!, 9)
      expect(same[k]!.cautiousMm!).toBeLessThanOrEqual(finding.cautiousMm!)
      expect(twice[k]!.expectedMm!).toBeGreaterThan(finding.expectedMm!)
    })
    expect(same[1]!.cautiousMm!).toBeLessThan(assumed[1]!.cautiousMm!)
  })
})
