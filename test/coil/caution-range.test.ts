import { describe, expect, test } from 'vitest'
import { assessCoil, type CoilInput } from '../../src/coil/assess-coil.ts'
import { COIL_PARAMETERS, type CoilParameters, cautiousParameters } from '../../src/coil/parameters.ts'
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
    expect(cautious.product).toEqual({ amplitude: 0.2, phaseRad: 0.0175 * 1.5, remainder: 0.015 })
    expect(cautious.wrapper.phaseRad).toBeCloseTo(0.0075, 12)
    expect(cautious.drySpread).toBe(COIL_PARAMETERS.drySpread)
  })

  test('is the expected size of a machine so much noisier at the top of the conductivity’s range', () => {
    const own = findings()
    const bad = findings({
      parameters: cautiousParameters(COIL_PARAMETERS),
      point: samplePoint({}, { conductivitySPerM: 1.2 }),
    })
    own.forEach((finding, k) => {
      expect(finding.cautiousMm).toBeCloseTo(bad[k]!.expectedMm!, 9)
    })
  })

  test('names the assumption that alone widens it most', () => {
    for (const finding of findings()) {
      const noise = withParameters({ noiseM3: COIL_PARAMETERS.noiseM3 * 1.3 })[finding.contaminant]!
        .expectedMm!
      const { product } = cautiousParameters(COIL_PARAMETERS)
      const residual = withParameters({ product })[finding.contaminant]!.expectedMm!
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
})
