import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { RunsTyped } from '../../../views/runs/props.ts'
import { parseBrief } from '../../brief/index.ts'
import { type Brief, type Clause, clauseSchema, type Problem, type RunRow } from '../../contract/index.ts'
import { readRunsTable } from '../../runs/index.ts'
import { postedForm } from './form-answers.ts'
import { unpackBrief } from './packed-brief.ts'

export const NOTHING_TYPED: RunsTyped = {
  table: '',
  machine: '',
  clauseSize: '',
  clausePieces: '',
  clauseMisses: '',
  clauseClean: '',
  clauseRejects: '',
}

export interface AskedRuns {
  readonly packed: string | null
  readonly brief: Brief | null
  readonly typed: RunsTyped
  readonly rows: readonly RunRow[]
  readonly clause: Clause | null
  readonly problems: readonly Problem[]
}

/** The brief a trial is of, where the address or the form carries one; 400 where it cannot be read. */
export function briefOfTrial(packed: string): { packed: string | null; brief: Brief | null } {
  if (packed === '') return { packed: null, brief: null }
  const read = unpackBrief(packed)
  const parsed = 'brief' in read ? parseBrief(read.brief) : null
  if (!parsed?.ok)
    throw new HTTPException(400, {
      message: 'The address carries no readable brief: it may have been cut short. Copy the whole of it.',
    })
  return { packed, brief: parsed.brief }
}

/** A posted table with its clause and brief: rows, or everything that is wrong with them. */
export async function askedRuns(c: Context): Promise<AskedRuns> {
  const form = await postedForm(c)
  const said = (name: string) => (typeof form[name] === 'string' ? form[name] : '')
  const { packed, brief } = briefOfTrial(said('b'))
  const { file } = form
  const typed: RunsTyped = {
    table: file instanceof File && file.size > 0 ? await file.text() : said('table'),
    machine: said('machine'),
    clauseSize: said('clauseSize'),
    clausePieces: said('clausePieces'),
    clauseMisses: said('clauseMisses'),
    clauseClean: said('clauseClean'),
    clauseRejects: said('clauseRejects'),
  }
  const base = { packed, brief, typed }
  if (typed.table.trim() === '')
    return {
      ...base,
      rows: [],
      clause: null,
      problems: [{ path: '', message: 'Paste a table or choose a file' }],
    }
  const read = readRunsTable(typed.table, {
    ownMaterials: brief?.contaminants.map(({ material }) => material) ?? [],
  })
  const clause = clauseOf(typed)
  const problems = [...(read.ok ? [] : read.problems), ...clause.problems]
  return { ...base, rows: read.ok ? read.rows : [], clause: clause.clause, problems }
}

export function clauseOf(typed: RunsTyped): { clause: Clause | null; problems: Problem[] } {
  const { clauseSize, clausePieces, clauseMisses, clauseClean, clauseRejects } = typed
  if (clauseSize.trim() === '') return { clause: null, problems: [] }
  const number = (text: string, usual?: number) =>
    text.trim() === '' && usual !== undefined ? usual : Number(text.replace(',', '.'))
  const parsed = clauseSchema.safeParse({
    sizeMm: number(clauseSize),
    pieces: clausePieces.trim() === '' ? undefined : number(clausePieces),
    misses: number(clauseMisses, 0),
    cleanPacks: number(clauseClean, 0),
    cleanRejects: number(clauseRejects, 0),
  })
  if (parsed.success) return { clause: parsed.data, problems: [] }
  return {
    clause: null,
    problems: parsed.error.issues.map(({ message }) => ({ path: 'clause', message })),
  }
}
