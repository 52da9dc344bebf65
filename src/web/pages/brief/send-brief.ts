import type { Context } from 'hono'
import { type Answers, tooManyRows } from '../../../brief/form/form.ts'
import { mostRows } from '../../../brief/form/form-index.ts'
import { addRow, isFull, readAction, removeRow } from '../../../brief/form/form-rows.ts'
import { enteredOf } from '../../../brief/usual/usual-contaminants.ts'
import type { Advisor } from '../../advisor.ts'
import { formAnswers } from '../../asked/form-answers.ts'
import { keptAddress } from '../../asked/kept-form.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { checkForm } from '../../shown/sheet.ts'
import { showForm } from './brief-page.tsx'

/** The form sent: to the advice when it is good, back with every answer kept when it is not. */
export const sendBrief = (advisor: Advisor) => async (c: Context) => {
  const { action, 'brief-json': _, ...answers } = await formAnswers(c)
  const asked = readAction(action)
  if (asked.do === 'add' && isFull(answers, asked.list)) {
    const most = mostRows(asked.list)!
    const problems = [{ path: asked.list, message: tooManyRows(asked.list, most, most + 1) }]
    return showForm(c, advisor, answers, { problems })
  }
  if (asked.do === 'add') return keep(c, advisor, addRow(answers, asked.list), asked.list, true)
  if (asked.do === 'remove')
    return keep(c, advisor, removeRow(answers, asked.row), asked.row.replace(/\.\d+$/, ''), false)
  if (asked.do === 'check') return showForm(c, advisor, answers)
  const { brief, problems } = checkForm(answers)
  if (brief) return c.redirect(`/advice?b=${packBrief(enteredOf(brief))}`, 303)
  return showForm(c, advisor, answers, { problems })
}

/** The form with a row more or less, at an address of its own where that is not too long. */
function keep(c: Context, advisor: Advisor, answers: Answers, list: string, added: boolean) {
  const address = keptAddress(answers, list, added)
  return address ? c.redirect(address, 303) : showForm(c, advisor, answers)
}
