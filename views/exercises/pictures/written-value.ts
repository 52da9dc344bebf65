import { count } from '../../../src/exercises/numbers.ts'
import { chanceNumber, sizeWords } from '../../words/size.ts'

const grouped = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 3 })
const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })

/** A value with its unit: sizes rounded up, counts whole, the rest to three digits. */
export function writtenValue(value: number, unit: string): string {
  if (unit === 'mm') return `${value >= 10 && Number.isInteger(value) ? value : sizeWords(value)} mm`
  if (unit === '%') return `${chanceNumber(value)} %`
  if (unit === 'packs' || unit === 'bags') return `${count(value)} ${value === 1 ? unit.slice(0, -1) : unit}`
  const number = value >= 100 ? whole.format(value) : grouped.format(value)
  return unit ? `${number} ${unit}` : number
}

export const threeDigits = (value: number): string => grouped.format(value)
