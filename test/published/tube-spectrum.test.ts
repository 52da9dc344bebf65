import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import {
  airKermaMicroGy,
  fluencePerMm2,
  halfValueLayersMmAl,
  meanEnergyKeV,
} from '../../src/xray/beam/beam-quality.ts'
import { behindFilters } from '../../src/xray/beam/filters.ts'
import { scaledCrossSection, stoppingPower, tubeSpectrum } from '../../src/xray/beam/spectrum.ts'

const relative = (value: number, reference: number) => Math.abs(value / reference - 1)

describe('the tungsten tube against an independent implementation', () => {
  const { rows } = JSON.parse(
    readFileSync(new URL('../xray/fixtures/tube-outputs.json', import.meta.url), 'utf8'),
  ) as {
    rows: {
      kV: number
      angle: number
      Al_mm: number
      air_mm: number
      kerma_uGy_per_mAs_1m: number
      fluence_per_mm2_mAs_1m: number
      Emean: number
      HVL1_mmAl: number
      HVL2_mmAl: number
    }[]
  }
  it.each(rows)('$kV kV behind $Al_mm mm Al: every column within 2.5 %', (row) => {
    const spectrum = behindFilters(tubeSpectrum(row.kV, row.angle), [
      ['aluminium', row.Al_mm],
      ['air', row.air_mm],
    ])
    const { first, second } = halfValueLayersMmAl(spectrum)
    expect(relative(airKermaMicroGy(spectrum), row.kerma_uGy_per_mAs_1m)).toBeLessThan(0.025)
    expect(relative(fluencePerMm2(spectrum), row.fluence_per_mm2_mAs_1m)).toBeLessThan(0.025)
    expect(relative(meanEnergyKeV(spectrum), row.Emean)).toBeLessThan(0.025)
    expect(relative(first, row.HVL1_mmAl)).toBeLessThan(0.025)
    expect(relative(second, row.HVL2_mmAl)).toBeLessThan(0.025)
  })

  it('slowing down and cross section at probe energies (same implementation)', () => {
    const energies = [2, 5, 10, 20, 50, 100, 150]
    const expected = [18464, 13296, 8975.8, 5755.1, 3139.8, 2050.1, 1650]
    energies.forEach((keV, i) => {
      expect(relative(stoppingPower(keV), expected[i]!)).toBeLessThan(1e-4)
    })
    expect(relative(scaledCrossSection(8, 0.25), 3.5971)).toBeLessThan(1e-4)
    expect(relative(scaledCrossSection(120, 0.96), 5.1677)).toBeLessThan(1e-4)
  })
})
