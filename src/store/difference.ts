/** One value that is not the same in two revisions, by its path; undefined where it is in one only. */
export interface Changed {
  readonly path: string
  readonly from: unknown
  readonly to: unknown
}

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null

/** What differs between two bodies, leaf by leaf, in the order of the first. */
export function difference(from: unknown, to: unknown, path = ''): Changed[] {
  if (Object.is(from, to)) return []
  if (!isGroup(from) || !isGroup(to) || Array.isArray(from) !== Array.isArray(to)) return [{ path, from, to }]
  const keys = [...new Set([...Object.keys(from), ...Object.keys(to)])]
  return keys.flatMap((key) => difference(from[key], to[key], path === '' ? key : `${path}.${key}`))
}
