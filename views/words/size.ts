import { roundedUp } from '../../src/numerics/rounded-up.ts'

/** A size as a reader may rely on it: rounded up; a dash where there is none. */
export const sizeWords = (mm: number | null): string => (mm === null ? '–' : roundedUp(mm))

/** A number of a calculation: four significant digits, powers of ten where it is very small or large. */
export function valueWords(value: number | string | boolean | null): string {
  if (value === null) return 'none'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'string') return value
  if (!Number.isFinite(value)) return String(value)
  const size = Math.abs(value)
  if (size !== 0 && (size < 1e-4 || size >= 1e6)) return powerWords(value)
  return String(Number(value.toPrecision(4))).replace('-', '−')
}

function powerWords(value: number): string {
  const [digits = '', power = '0'] = value.toExponential(3).split('e')
  return `${digits.startsWith('-') ? '−' : ''}${Math.abs(Number(digits))} × 10${[...String(Number(power))].map(raised).join('')}`
}

function raised(character: string): string {
  return character === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(character)] ?? character)
}

/** A chance of finding, without a certainty the model cannot have. */
export function chanceWords(chance: number | null): string {
  if (chance === null) return '–'
  return `${chanceNumber(chance * 100)} %`
}

/** A share in per cent as a number, without a certainty the model cannot have. */
export function chanceNumber(percent: number): string {
  if (percent > 99.9) return 'over 99.9'
  if (percent < 0.1) return 'under 0.1'
  return percent >= 99 || percent < 10 ? percent.toFixed(1) : percent.toFixed(0)
}
