import type { Context } from 'hono'
import { wouldHaveFound } from '../../advice/found/fragment.ts'
import { parseFragment } from '../../brief/index.ts'
import { adviseGiven } from '../advise-given.ts'
import type { Advise } from '../advisor.ts'
import { refuse } from '../asked/refusal.ts'
import type { House } from '../house-book.ts'
import { partsOfBody } from './json-body.ts'

/** POST { brief, fragment }, get the chance of finding it at each point and machine; 422 with the problems. */
export const fragmentApi = (answers: Advise, house: House) => async (c: Context) => {
  const { brief, fragment } = await partsOfBody(c, ['brief', 'fragment'])
  const parsed = parseFragment(brief, fragment)
  if (!parsed.ok) return refuse(parsed.problems)
  return c.json(
    await wouldHaveFound(parsed.brief, parsed.piece, parsed.given, adviseGiven(answers), house.book()),
  )
}
