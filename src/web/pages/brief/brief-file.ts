import type { Context } from 'hono'
import { goodBrief } from '../../asked/asked-brief.ts'

/** The brief in the address as a file to keep. */
export const briefFile = (c: Context) => {
  const { brief } = goodBrief(c)
  const name =
    brief.title
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'brief'
  c.header('content-type', 'application/json; charset=utf-8')
  c.header('content-disposition', `attachment; filename="${name}.json"`)
  return c.body(`${JSON.stringify(brief.given, null, 2)}\n`)
}
