import { describe, expect, it } from 'vitest'
import { fillText, namesIn, quantityText } from '../../../src/advice/book/placeholders.ts'

describe('values in a text', () => {
  it.each([
    [30, 'mm', '30 mm'],
    [12.345, 'mm', '12.3 mm'],
    [0.048_51, '%', '0.0485 %'],
    [1234.5, 'lines/s', '1,235 lines/s'],
    [4, '', '4'],
    [true, '', 'yes'],
    [false, '', 'no'],
    ['jar', '', 'jar'],
    [null, 'mm', 'not known'],
  ] as const)('%s %s reads %s', (value, unit, text) => {
    expect(quantityText({ value, unit })).toBe(text)
  })
  it('stand where their names stood', () => {
    const facts: Record<string, { value: number; unit: string }> = {
      'point.heightMm': { value: 30, unit: 'mm' },
    }
    expect(fillText('At {point.heightMm} of {food}.', (name) => facts[name])).toBe(
      'At 30 mm of (no food here).',
    )
  })
  it('are found by name, each once', () => {
    expect(namesIn('{a.b} and {threshold.c} and {a.b}')).toEqual(['a.b', 'threshold.c'])
  })
})
