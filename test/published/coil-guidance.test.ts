import { describe, expect, test } from 'vitest'
import { assessCoil } from '../../src/coil/assess-coil.ts'
import { sampleContaminant, samplePoint } from '../coil/sample-point.ts'

const sizes = (
  openingMm: number,
  frequenciesKHz: number[],
  conductivitySPerM: number,
  material: string,
  temperatureC = 5,
) => {
  const assessment = assessCoil({
    machine: { id: 'coil', family: 'coil', frequenciesKHz, use: 'choose' },
    point: samplePoint(
      {
        apertureHeightMm: openingMm,
        apertureWidthMm: 2 * openingMm,
        widthMm: openingMm,
        heightMm: openingMm / 2,
        lengthMm: 2 * openingMm,
      },
      { conductivitySPerM, temperatureC },
    ),
    contaminants: [sampleContaminant(material)],
    mostAtOnce: 1,
  })
  return assessment.findings[0]!
}

describe('guidance (one-sided: a pass limit is not a measured ability)', () => {
  test('US Commercial Item Description A-A-20198, section J (mark V): a magnetic stainless ball of 1.5 mm on the belt, 3.0 mm in a container, frozen sausage', () => {
    for (const opening of [100, 150]) {
      expect(sizes(opening, [50, 100, 300, 500, 850], 0.005, 'ss440', -18).expectedMm!).toBeLessThan(1.5)
    }
    for (const opening of [300, 400]) {
      expect(sizes(opening, [50, 100, 300, 500, 850], 0.005, 'ss440', -18).expectedMm!).toBeLessThan(3.0)
    }
  })

  test('J.-K. Choi 2014, Journal of Sensors 412621 (abstract, mark V): 0.7 mm of iron at 50 kHz in a laboratory detector is within reach of a small opening', () => {
    expect(sizes(100, [50], 0, 'steel').bestMm!).toBeLessThan(0.75)
    expect(sizes(200, [50], 0, 'steel').bestMm!).toBeGreaterThan(0.75)
  })
})

describe('growth of sizes with the opening, dry, 150 to 300 mm (exponents computed, mark C)', () => {
  test.each([
    ['steel', 0.92, 0.97],
    ['brass', 0.67, 0.91],
    ['ss316', 0.51, 0.62],
  ])('%s: between h^%d and h^%d from 100 to 850 kHz', (material, least, most) => {
    for (const f of [100, 850]) {
      const exponent = Math.log2(sizes(300, [f], 0, material).bestMm! / sizes(150, [f], 0, material).bestMm!)
      expect(exponent).toBeGreaterThan(least - 0.03)
      expect(exponent).toBeLessThan(most + 0.03)
    }
  })
})
