import type { Context } from 'hono'
import type { Advisor } from '../advisor.ts'
import { sameAgain } from '../same-again.ts'
import { briefBody } from './json-body.ts'

/** POST a brief, get the advice; 422 with the problems of a brief that cannot be advised on. */
export const adviceApi = (advisor: Advisor) => async (c: Context) => {
  const advice = await advisor.whole(await briefBody(c))
  sameAgain(c)
  return c.body(JSON.stringify(advice), 200, { 'content-type': 'application/json' })
}
