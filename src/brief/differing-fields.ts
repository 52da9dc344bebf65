import type { BriefInput } from '../contract/index.ts'

/** A value that stands in one brief and not in the other, by its dotted path; undefined where it is not given. */
export interface DifferingField {
  readonly path: string
  readonly first: string | undefined
  readonly second: string | undefined
}

/** Every value of a brief by its dotted path. */
function flat(value: unknown, path = ''): [string, string][] {
  if (typeof value !== 'object' || value === null) return [[path, String(value)]]
  return Object.entries(value).flatMap(([key, inner]) => flat(inner, path === '' ? key : `${path}.${key}`))
}

/** A brief as it was entered may name no contaminants. */
type BriefOrPart = Omit<BriefInput, 'contaminants'>

/** Values of two briefs that came, went or changed, by path. */
export function differingFields(first: BriefOrPart, second: BriefOrPart): DifferingField[] {
  const [one, other] = [new Map(flat(first)), new Map(flat(second))]
  return [...new Set([...one.keys(), ...other.keys()])]
    .sort()
    .map((path) => ({ path, first: one.get(path), second: other.get(path) }))
    .filter((field) => field.first !== field.second)
}
