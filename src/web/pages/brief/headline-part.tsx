import type { Context } from 'hono'
import { Headline } from '../../../../views/brief/headline.tsx'
import { NoteLine } from '../../../../views/brief/note-line.tsx'
import { fieldAt } from '../../../brief/form/form-fields.ts'
import { formIndex, isKept } from '../../../brief/form/form-index.ts'
import type { Advisor } from '../../advisor.ts'
import { formAnswers } from '../../asked/form-answers.ts'
import { showPage } from '../../show-page.ts'
import { checkForm, neededIn, notesOf } from '../../shown/sheet.ts'

/** The answer so far and the line under each field, while the form is being filled; never a complaint. */
export const headlinePart = (advisor: Advisor) => async (c: Context) => {
  const answers = await formAnswers(c)
  const checked = checkForm(answers)
  const notes = notesOf(answers, checked)
  const advice = checked.brief ? await advisor.quick(checked.brief) : null
  const { rows } = formIndex(answers)
  const lines = Object.keys(answers).filter(
    (path) => isKept(path, rows) && !['words', 'text', undefined].includes(fieldAt(path)?.kind),
  )
  return showPage(
    c,
    <>
      <Headline advice={advice} needed={neededIn(checked)} />
      {lines.map((path) => (
        <NoteLine path={path} note={notes.get(path)} swap />
      ))}
    </>,
  )
}
