import type { Context } from 'hono'
import { parseBrief } from '../../brief/index.ts'
import type { Brief, Problem } from '../../contract/index.ts'
import { againstPrediction, LINKS, readRunRows, readRunsTable, readTrial } from '../../runs/index.ts'
import type { Advisor } from '../advisor.ts'
import { jsonBody } from './json-body.ts'

const KEYS = ['csv', 'rows', 'brief', 'link']

/** POST { csv or rows, brief?, link? }, get the trial as read; 422 with every problem, nothing half-read. */
export const runsApi = (advisor: Advisor) => async (c: Context) => {
  const body = await jsonBody(c)
  const given = (typeof body === 'object' && body !== null ? body : {}) as Record<string, unknown>
  const problems: Problem[] = Object.keys(given)
    .filter((key) => !KEYS.includes(key))
    .map((key) => ({ path: key, message: `unknown key "${key}"; allowed here: ${KEYS.join(', ')}` }))
  const { csv, rows, brief: briefGiven, link = 'logit' } = given
  if ((csv === undefined) === (rows === undefined))
    problems.push({ path: 'csv', message: 'give csv (the text of a table) or rows, one of the two' })
  if (csv !== undefined && typeof csv !== 'string')
    problems.push({ path: 'csv', message: 'csv must be the text of a table of runs' })
  const asked = LINKS.find((known) => known === link)
  if (!asked) problems.push({ path: 'link', message: `link must be one of ${LINKS.join(', ')}` })
  const brief = briefGiven === undefined ? null : parseBrief(briefGiven)
  if (brief && !brief.ok)
    problems.push(...brief.problems.map((one) => ({ ...one, path: `brief.${one.path}` })))
  if (problems.length > 0) return c.json({ problems }, 422)
  const known: Brief | null = brief?.ok ? brief.brief : null
  const options = { ownMaterials: known?.contaminants.map(({ material }) => material) ?? [] }
  const read = csv === undefined ? readRunRows(rows, options) : readRunsTable(csv as string, options)
  if (!read.ok) return c.json({ problems: read.problems }, 422)
  const trial = readTrial(read.rows, asked!)
  if (!known) return c.json(trial)
  const advice = await advisor.quick(known)
  return c.json({ ...trial, prediction: againstPrediction(trial.groups, advice) })
}
