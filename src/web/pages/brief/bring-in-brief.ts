import type { Context } from 'hono'
import { placeWords } from '../../../../views/words/path.ts'
import type { Answers } from '../../../brief/form/form.ts'
import { parseBrief } from '../../../brief/index.ts'
import { enteredOf } from '../../../brief/usual/usual-contaminants.ts'
import { readJsonText } from '../../../intake/json-text.ts'
import type { Advisor } from '../../advisor.ts'
import { postedForm } from '../../asked/form-answers.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { EMPTY_FORM } from '../../shown/sheet.ts'
import { showForm } from './brief-page.tsx'

/** A brief pasted or uploaded as JSON: into the form when it is good, back with the reason when not. */
export const bringInBrief = (advisor: Advisor) => async (c: Context) => {
  const { 'brief-json': json, 'brief-file': file, action: _, ...posted } = await postedForm(c)
  const answers: Answers = Object.fromEntries(
    Object.entries(posted).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  )
  const typed =
    file instanceof File && file.size > 0 ? await file.text() : typeof json === 'string' ? json : ''
  const refuse = (wrong: string) =>
    showForm(c, advisor, Object.keys(answers).length > 0 ? answers : EMPTY_FORM, {
      problems: [{ path: 'brief-json', message: wrong }],
      imported: { typed, wrong },
    })
  if (typed.trim() === '') return refuse('Paste a brief or choose a file')
  const read = readJsonText(typed)
  if (!read.ok) return refuse(read.because.charAt(0).toUpperCase() + read.because.slice(1))
  const parsed = parseBrief(read.value)
  if (!parsed.ok)
    return refuse(parsed.problems.map(({ path, message }) => `${placeWords(path)}: ${message}`).join('; '))
  return c.redirect(`/brief?b=${packBrief(enteredOf(parsed.brief))}`, 303)
}
