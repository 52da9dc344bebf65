import type { Context } from 'hono'
import { parseBrief } from '../../brief/index.ts'
import type { Advisor } from '../advisor.ts'
import { jsonBody } from './json-body.ts'

/** POST a brief, get the advice; 422 with the problems of a brief that cannot be advised on. */
export const adviceApi = (advisor: Advisor) => async (c: Context) => {
  const parsed = parseBrief(await jsonBody(c))
  return parsed.ok ? c.json(await advisor.whole(parsed.brief)) : c.json({ problems: parsed.problems }, 422)
}
