import type { Context } from 'hono'
import { wouldHaveFound } from '../../advice/found/fragment.ts'
import { parseFragment } from '../../brief/index.ts'
import { adviseGiven } from '../advise-given.ts'
import type { Advise } from '../advisor.ts'
import { jsonBody } from './json-body.ts'

/** POST { brief, fragment }, get the chance of finding it at each point and machine; 422 with the problems. */
export const fragmentApi = (answers: Advise) => async (c: Context) => {
  const body = await jsonBody(c)
  const { brief, fragment, ...more } = (typeof body === 'object' && body !== null ? body : {}) as Record<
    string,
    unknown
  >
  const [unknown] = Object.keys(more)
  if (unknown !== undefined)
    return c.json(
      { problems: [{ path: unknown, message: `unknown key "${unknown}"; allowed here: brief, fragment` }] },
      422,
    )
  const parsed = parseFragment(brief, fragment)
  if (!parsed.ok) return c.json({ problems: parsed.problems }, 422)
  return c.json(await wouldHaveFound(parsed.brief, parsed.piece, parsed.given, adviseGiven(answers)))
}
