import type { Context } from 'hono'
import type { Advisor } from '../advisor.ts'
import { drawnOnce } from '../drawn-once.ts'
import { briefBody } from './json-body.ts'

/** POST a brief, get the advice; 422 with the problems of a brief that cannot be advised on. */
export const adviceApi = (advisor: Advisor) => async (c: Context) => {
  const advice = await advisor.whole(await briefBody(c))
  const json = drawnOnce(advice, `json ${JSON.stringify(advice.brief)}`, () => JSON.stringify(advice))
  return c.body(json, 200, { 'content-type': 'application/json' })
}
