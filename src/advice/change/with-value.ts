import type { BriefInput } from '../../contract/index.ts'

/** The brief with a value put in at a dotted path; what a point leaves out, such as its own product, is made. */
export function withValue(given: BriefInput, path: string, value: unknown): BriefInput {
  const copy = structuredClone(given)
  const keys = path.split('.')
  let at = copy as unknown as Record<string, unknown>
  for (const key of keys.slice(0, -1)) {
    at[key] ??= {}
    at = at[key] as Record<string, unknown>
  }
  at[keys.at(-1)!] = value
  return copy
}
