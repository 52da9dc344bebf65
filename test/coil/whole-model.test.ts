import { expect, test } from 'vitest'
import { assessCoil } from '../../src/coil/assess-coil.ts'
import { COIL_PARAMETERS } from '../../src/coil/parameters.ts'
import type { ProductSignal } from '../../src/contract/brief.ts'
import { fixture, sampleContaminant, samplePoint } from './sample-point.ts'

interface Case {
  name: string
  widthMm: number
  heightMm: number
  lengthMm: number
  conductivitySPerM: number
  apertureHeightMm: number
  apertureWidthMm: number
  frequenciesKHz: number[]
  productSignal: ProductSignal
  findable: Record<string, { expectedMm: number; bestMm: number }>
}

// Source: an independent implementation of the whole model, rounded to 0.001 mm.
const { cases, noiseM3, falseRejectsPerPack } = fixture<{
  cases: Case[]
  noiseM3: number
  falseRejectsPerPack: number
}>('whole-model')

const idOf = (name: string) => (name === 'mildsteel' ? 'steel' : name)

test.each(cases)('$name ($frequenciesKHz kHz): expected and best sizes within 0.5 %', (worked) => {
  const names = Object.keys(worked.findable)
  const assessment = assessCoil({
    machine: { id: 'coil', family: 'coil', frequenciesKHz: worked.frequenciesKHz, use: 'together' },
    point: samplePoint(
      {
        widthMm: worked.widthMm,
        heightMm: worked.heightMm,
        lengthMm: worked.lengthMm,
        apertureHeightMm: worked.apertureHeightMm,
        apertureWidthMm: worked.apertureWidthMm,
        productSignal: worked.productSignal,
        falseRejectsPerPack,
      },
      { conductivitySPerM: worked.conductivitySPerM },
    ),
    contaminants: names.map((name) => sampleContaminant(idOf(name))),
  })
  names.forEach((name, k) => {
    const { expectedMm, bestMm } = worked.findable[name]!
    expect(Math.abs(assessment.findings[k]!.expectedMm! / expectedMm - 1)).toBeLessThan(0.005)
    expect(Math.abs(assessment.findings[k]!.bestMm! / bestMm - 1)).toBeLessThan(0.005)
  })
})

test('the calibration holds: mild steel 0.90 mm, dry, the best single frequency of five', () => {
  expect(COIL_PARAMETERS.noiseM3).toBe(noiseM3)
  const assessment = assessCoil({
    machine: { id: 'coil', family: 'coil', frequenciesKHz: [50, 100, 300, 500, 850], use: 'choose' },
    point: samplePoint({ heightMm: 60 }, { conductivitySPerM: 0 }),
    contaminants: [sampleContaminant('steel')],
  })
  expect(assessment.frequenciesKHz).toEqual([850])
  expect(Math.abs(assessment.findings[0]!.expectedMm! / 0.9 - 1)).toBeLessThan(1e-4)
})
