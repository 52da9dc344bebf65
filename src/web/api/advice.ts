import type { Context } from 'hono'
import { parseBrief } from '../../brief/index.ts'
import type { Advise } from '../advisor.ts'
import { jsonBody } from './json-body.ts'

/** POST a brief, get the advice; 422 with the problems of a brief that cannot be advised on. */
export const adviceApi = (advise: Advise) => async (c: Context) => {
  const parsed = parseBrief(await jsonBody(c))
  return parsed.ok ? c.json(await advise(parsed.brief)) : c.json({ problems: parsed.problems }, 422)
}
