import {
  type Brief,
  type BriefInput,
  type Contaminant,
  type ContaminantInput,
  type Fragment,
  fragmentSchema,
  type Problem,
} from '../contract/index.ts'
import { parseBrief } from './parse.ts'
import { unknownKeys } from './problems.ts'

export type ParsedFragment =
  | { ok: true; brief: Brief; piece: Contaminant; given: ContaminantInput }
  | { ok: false; problems: Problem[] }

/** A fragment as a contaminant whose size to find is its own size. */
function asContaminant({ sizeMm, ...piece }: Fragment): ContaminantInput {
  return { ...piece, mustFindMm: sizeMm, basis: 'customer' }
}

const ownPath = (path: string) =>
  path.replace(/^contaminants\.0(\.|$)/, 'fragment$1').replace('mustFindMm', 'sizeMm')

/** What the schema has against a fragment; an unknown key names the nearest allowed one. */
function schemaProblems(input: unknown): Problem[] {
  const read = fragmentSchema.safeParse(input)
  if (read.success) return []
  const allowed = Object.keys(fragmentSchema.shape)
  return read.error.issues.flatMap((issue): Problem[] => {
    const path = ['fragment', ...issue.path].join('.')
    if (issue.code === 'invalid_type' && issue.path.length === 0)
      return [{ path, message: 'must be an object with the material and the size of the piece' }]
    if (issue.code !== 'unrecognized_keys') return [{ path, message: issue.message }]
    return unknownKeys(issue.keys, [path], allowed)
  })
}

/**
 * A found piece and the brief of the line it came from, both checked; problems of the piece name its own
 * fields (fragment.material, fragment.sizeMm, …).
 */
export function parseFragment(brief: unknown, fragment: unknown): ParsedFragment {
  const line = parseBrief(brief)
  const wrong = schemaProblems(fragment)
  const lineProblems = line.ok ? [] : line.problems
  if (wrong.length > 0 || !line.ok) return { ok: false, problems: [...wrong, ...lineProblems] }
  const given = asContaminant(fragmentSchema.parse(fragment))
  // What speaks of the brief's own contaminants by number does not speak of the piece.
  const own = { quotes: [], finds: [], answers: [], measured: [], demonstrated: [] }
  const asked: BriefInput = { ...line.brief.given, contaminants: [given], ...own }
  const parsed = parseBrief(asked)
  if (!parsed.ok)
    return { ok: false, problems: parsed.problems.map((p) => ({ ...p, path: ownPath(p.path) })) }
  return { ok: true, brief: line.brief, piece: parsed.brief.contaminants[0]!, given }
}
