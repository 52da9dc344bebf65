import { quoted } from '../contract/quoted.ts'
import { InputError } from './input.ts'

/** A whole number of an option, within what it allows. */
export function wholeNumber(name: string, text: string, from: number, to: number): number {
  if (!/^\d{1,6}$/.test(text) || Number(text) < from || Number(text) > to)
    throw new InputError(`${name} must be a whole number from ${from} to ${to}; ${quoted(text)} was given`)
  return Number(text)
}
