import type { Context } from 'hono'
import { parseBrief, problemsOf } from '../../brief/index.ts'
import { type Brief, clauseSchema, type Problem } from '../../contract/index.ts'
import { MOST_BYTES_OF_RUNS } from '../../intake/bounds.ts'
import { beforeTrials, heldAgainst, LINKS, readRunRows, readRunsTable, readTrial } from '../../runs/index.ts'
import type { Advisor } from '../advisor.ts'
import { refuse } from '../asked/refusal.ts'
import { partsOfBody } from './json-body.ts'

/** POST { csv or rows, brief?, link? }, get the trial as read; 422 with the problems, nothing half-read. */
export const runsApi = (advisor: Advisor) => async (c: Context) => {
  const given = await partsOfBody(
    c,
    ['csv', 'rows', 'brief', 'machine', 'link', 'clause'],
    MOST_BYTES_OF_RUNS,
  )
  const { csv, rows, link = 'logit' } = given
  const problems: Problem[] = []
  const machine = typeof given.machine === 'string' ? given.machine : null
  if (given.machine !== undefined && machine === null)
    problems.push({ path: 'machine', message: 'machine must be the id of a machine of the brief' })
  if ((csv === undefined) === (rows === undefined))
    problems.push({ path: 'csv', message: 'give csv (the text of a table) or rows, one of the two' })
  if (csv !== undefined && typeof csv !== 'string')
    problems.push({ path: 'csv', message: 'csv must be the text of a table of runs' })
  const asked = LINKS.find((known) => known === link)
  if (!asked) problems.push({ path: 'link', message: `link must be one of ${LINKS.join(', ')}` })
  const clause = given.clause === undefined ? null : clauseSchema.safeParse(given.clause)
  for (const { path, message } of problemsOf(clause?.error?.issues ?? [], given.clause, clauseSchema))
    problems.push({ path: path === '' ? 'clause' : `clause.${path}`, message })
  const brief = given.brief === undefined ? null : briefOf(given.brief, problems)
  if (problems.length > 0 || !asked) return refuse(problems)
  const options = { ownMaterials: brief?.contaminants.map(({ material }) => material) ?? [] }
  const read = typeof csv === 'string' ? readRunsTable(csv, options) : readRunRows(rows, options)
  if (!read.ok) return refuse(read.problems)
  const trial = readTrial(read.rows, asked, clause?.data ?? null)
  if (!brief) return c.json(trial)
  return c.json(heldAgainst(trial, await advisor.quick(beforeTrials(brief)), machine))
}

function briefOf(given: unknown, problems: Problem[]): Brief | null {
  const parsed = parseBrief(given)
  if (parsed.ok) return parsed.brief
  problems.push(
    ...parsed.problems.map((one) => ({ ...one, path: one.path === '' ? 'brief' : `brief.${one.path}` })),
  )
  return null
}
