import type { Context } from 'hono'
import { enteredOf } from '../../../brief/usual/usual-contaminants.ts'
import { fileName } from '../../../intake/file-name.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { disposition } from '../../shown/attachment.ts'

/** The brief in the address as a file to keep. */
export const briefFile = (c: Context) => {
  const { brief } = goodBrief(c)
  c.header('content-type', 'application/json; charset=utf-8')
  c.header(
    'content-disposition',
    disposition('attachment', `${fileName(brief.title.toLowerCase(), 'brief')}.json`),
  )
  return c.body(`${JSON.stringify(enteredOf(brief), null, 2)}\n`)
}
