import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readMeasure, writeMeasure } from '../../src/brief/form/measure.ts'

const read = (typed: string, unit: string) => {
  const reading = readMeasure(typed, unit)
  return reading.ok ? reading.value : reading.because
}

describe('a typed quantity', () => {
  it.each([
    ['30', 'mm', 30],
    ['3 cm', 'mm', 30],
    ['3cm', 'mm', 30],
    ['1.2 in', 'mm', 30.48],
    ['1/8 in', 'mm', 3.175],
    ['1 1/2"', 'mm', 38.1],
    ['1 500', 'mm', 1500],
    ['1\u202f500,5 g', 'g', 1500.5],
    ['12,5', '%', 12.5],
    ['0,005', '', 0.005],
    ['1,234.5', 'g', 1234.5],
    ['1.234,5', 'g', 1234.5],
    ['1,234,567', 'kg/h', 1234567],
    ['.5', 'mm', 0.5],
    ['0.5 m/s', 'm/min', 30],
    ['100 ft/min', 'm/min', 30.48],
    ['1 lb', 'g', 453.59237],
    ['2 kg', 'g', 2000],
    ['-4 °F', '°C', -20],
    ['−18 C', '°C', -18],
    ['273.15 K', '°C', 0],
    ['57 %', '', 0.57],
    ['1 in 1,000', '', 0.001],
    ['1:2000', '', 0.0005],
    ['0.3 oz', 'g', 8.5048569375],
    ['60 μm', 'mm', 0.06],
    ['5 mS/cm', 'S/m', 0.5],
    ['2 t/h', 'kg/h', 2000],
    ['3 /s', 'per minute', 180],
    ['90 s', 'min', 1.5],
    ['1e-7', '', 1e-7],
  ])('%s in a field of %s is %d', (typed, unit, value) => {
    expect(read(typed, unit)).toBe(value)
  })

  it('asks rather than guesses between 1500 and 1.5', () => {
    expect(read('1,500', 'mm')).toBe('"1,500" can be read two ways: write 1500 or 1.500')
  })

  it.each([
    ['abc', 'mm', /write a number/],
    ['12..5', 'mm', /write a number/],
    ['1 5', 'mm', /write a number/],
    ['30 kg', 'mm', /"kg" is not a unit known here; use mm, cm/],
    ['0x10', 'mm', /not a unit|write a number/],
    ['Infinity', 'mm', /write a number/],
    ['1 in 0', '', /write a share/],
  ])('%s in a field of %s is refused with what to do', (typed, unit, because) => {
    expect(read(typed, unit)).toMatch(because)
  })

  it('needs no echo when it is a bare number in the unit of the field, and one otherwise', () => {
    expect(readMeasure('30', 'mm')).toMatchObject({ plain: true })
    expect(readMeasure(' 30.5 ', 'mm')).toMatchObject({ plain: true })
    for (const typed of ['30 mm', '3 cm', '30,5', '1 500']) {
      expect(readMeasure(typed, 'mm')).toMatchObject({ ok: true, plain: false })
    }
  })

  it('comes back as written, for any number and any unit', () => {
    const number = fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((x) => Number(x.toPrecision(12)))
    fc.assert(
      fc.property(number, fc.constantFrom('mm', 'g', 'm/min', '', '°C'), (value, unit) => {
        expect(read(writeMeasure(value), unit)).toBe(value + 0)
        expect(read(`${writeMeasure(value)} ${unit}`, unit)).toBe(value + 0)
      }),
    )
  })

  it('is the same length whichever unit it is typed in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (mm) => {
        expect(read(`${mm / 10} cm`, 'mm')).toBeCloseTo(mm, 8)
        expect(read(`${mm / 1000} m`, 'mm')).toBeCloseTo(mm, 8)
        expect(read(`${(mm / 10).toFixed(1).replace('.', ',')} cm`, 'mm')).toBeCloseTo(mm, 8)
      }),
    )
  })
})
