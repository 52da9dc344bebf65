import { chanceNumber, sizeWords } from '../../words/size.ts'

const grouped = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 3 })
const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })

/** A value with its unit: sizes rounded up, counts whole, the rest to three digits. */
export function writtenValue(value: number, unit: string): string {
  if (unit === 'mm') return `${sizeWords(value)} mm`
  if (unit === '%') return `${chanceNumber(value)} %`
  if (unit === 'times') return `${value.toFixed(2)} times`
  const number = value >= 100 ? whole.format(value) : grouped.format(value)
  return unit ? `${number} ${value === 1 ? unit.replace(/^(pack|bag)s$/, '$1') : unit}` : number
}

export const threeDigits = (value: number): string => grouped.format(value)
