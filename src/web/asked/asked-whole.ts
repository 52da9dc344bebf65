import type { Context } from 'hono'
import { quoted } from '../../contract/quoted.ts'
import { refuse } from './refusal.ts'

/** A whole number in the address within what is allowed; `usual` where none is given, a refusal with the range otherwise. */
export function askedWhole(c: Context, name: string, usual: number, from: number, to: number): number {
  const given = c.req.query(name)
  if (given === undefined || given === '') return usual
  const value = Number(given)
  if (!Number.isInteger(value) || value < from || value > to)
    refuse([
      { path: name, message: `must be a whole number from ${from} to ${to}; ${quoted(given)} was given` },
    ])
  return value
}
