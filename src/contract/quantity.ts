import { z } from 'zod'
import { quoted } from './quoted.ts'

/** A number with a unit and an allowed range; the error says what was given and what is allowed. */
export function quantity(label: string, unit: string, min: number, max: number) {
  const range = `${min} to ${max}${unit ? ` ${unit}` : ''}`
  const message = (given: unknown) => `${label} must be a number from ${range}; ${quoted(given)} was given`
  return z
    .number({ error: (issue) => message(issue.input) })
    .min(min, { error: (issue) => message(issue.input) })
    .max(max, { error: (issue) => message(issue.input) })
    .meta({ description: `${label}${unit ? `, ${unit}` : ''}` })
}

/** A closed list of words; the error lists them. */
export function oneOf<const T extends readonly [string, ...string[]]>(label: string, words: T) {
  return z.enum(words, {
    error: (issue) => `${label} must be one of ${words.join(', ')}; ${quoted(issue.input)} was given`,
  })
}

/** What moves a terminal's cursor or hides in a line; tabs and ends of lines are no harm. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones that are refused
const CONTROL = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F]/

/** Free text of bounded length. */
export function text(label: string, max = 200) {
  return z
    .string({ error: (issue) => `${label} must be text; ${quoted(issue.input)} was given` })
    .max(max, { error: `${label} must be at most ${max} characters` })
    .refine((given) => !CONTROL.test(given), { error: `${label} must not hold control characters` })
}

/** True or false; the error says what was given. */
export function yesNo(label: string) {
  return z.boolean({
    error: (issue) => `${label} must be true or false; ${quoted(issue.input)} was given`,
  })
}

/** A whole number; the error says what was given and what is allowed. */
export const count = (label: string, from: number, to: number) =>
  quantity(label, '', from, to).int({
    error: (issue) => `${label} must be a whole number; ${quoted(issue.input)} was given`,
  })
