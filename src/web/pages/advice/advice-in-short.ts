import type { Context } from 'hono'
import { inShort } from '../../../lines/in-short.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { sameAgain } from '../../same-again.ts'

/** The advice on the brief in the address as few values, to be kept: what was said, under which versions. */
export const adviceInShort = (advisor: Advisor) => async (c: Context) => {
  const { brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  sameAgain(c)
  return c.json({ versions: advice.versions, title: brief.title, ...inShort(brief, advice) })
}
