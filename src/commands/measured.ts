import { readMeasure } from '../brief/form/measure.ts'
import { InputError } from './input.ts'

/** A length or area of an option, in any unit a person types; undefined where it was not given. */
export function measured(option: string, typed: string | undefined, unit: string): number | undefined {
  if (typed === undefined) return undefined
  const read = readMeasure(typed, unit)
  if (!read.ok) throw new InputError(`--${option}: ${read.because}`)
  return read.value
}
