import type { Context } from 'hono'
import { parseBrief } from '../../../brief/index.ts'
import type { Advisor } from '../../advisor.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { EMPTY_FORM } from '../../shown/sheet.ts'
import { showForm } from './brief-page.tsx'

/** A brief pasted or uploaded as JSON: into the form when it is good, back with the reason when not. */
export const bringInBrief = (advisor: Advisor) => async (c: Context) => {
  const { json, file } = await c.req.parseBody()
  const typed =
    file instanceof File && file.size > 0 ? await file.text() : typeof json === 'string' ? json : ''
  const refuse = (wrong: string) =>
    showForm(c, advisor, EMPTY_FORM, {
      problems: [{ path: 'brief-json', message: wrong }],
      imported: { typed, wrong },
    })
  let brief: unknown
  try {
    brief = JSON.parse(typed)
  } catch (error) {
    return refuse(
      typed.trim() === ''
        ? 'Paste a brief or choose a file'
        : `Not readable as JSON: ${(error as Error).message}`,
    )
  }
  const parsed = parseBrief(brief)
  if (!parsed.ok) return refuse(parsed.problems.map(({ path, message }) => `${path}: ${message}`).join('; '))
  return c.redirect(`/brief?b=${packBrief(parsed.brief.given)}`, 303)
}
