import type { Context } from 'hono'
import { tooManyRows } from '../../../brief/form/form.ts'
import { mostRows } from '../../../brief/form/form-index.ts'
import { addRow, isFull, readAction, removeRow } from '../../../brief/form/form-rows.ts'
import type { Advisor } from '../../advisor.ts'
import { formAnswers } from '../../asked/form-answers.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { checkForm } from '../../shown/sheet.ts'
import { showForm } from './brief-page.tsx'

/** The form sent: to the advice when it is good, back with every answer kept when it is not. */
export const sendBrief = (advisor: Advisor) => async (c: Context) => {
  const { action, ...answers } = await formAnswers(c)
  const asked = readAction(action)
  if (asked.do === 'add' && isFull(answers, asked.list)) {
    const most = mostRows(asked.list)!
    const problems = [{ path: asked.list, message: tooManyRows(asked.list, most, most + 1) }]
    return showForm(c, advisor, answers, { problems })
  }
  if (asked.do === 'add') return showForm(c, advisor, addRow(answers, asked.list))
  if (asked.do === 'remove') return showForm(c, advisor, removeRow(answers, asked.row))
  if (asked.do === 'check') return showForm(c, advisor, answers)
  const { brief, problems } = checkForm(answers)
  if (brief) return c.redirect(`/advice?b=${packBrief(brief.given)}`, 303)
  return showForm(c, advisor, answers, { problems })
}
