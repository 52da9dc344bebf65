import type { Context } from 'hono'
import { BriefPage } from '../../../../views/brief/brief-page.tsx'
import type { Answers } from '../../../brief/form/form.ts'
import { writeForm } from '../../../brief/form/form-writing.ts'
import { enteredOf } from '../../../brief/usual/usual-contaminants.ts'
import type { Problem } from '../../../contract/index.ts'
import type { Advisor } from '../../advisor.ts'
import { askedBrief } from '../../asked/asked-brief.ts'
import { keptForm } from '../../asked/kept-form.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'
import { demoLinks } from '../../shown/demo-links.ts'
import { checkForm, EMPTY_FORM, neededIn, sheetOf } from '../../shown/sheet.ts'

/** The empty brief, or the one in the address opened in the form. */
export const briefPage = (advisor: Advisor) => async (c: Context) => {
  const kept = keptForm(c)
  if (kept) return showForm(c, advisor, kept.answers, { focus: kept.focus })
  if (c.req.query('b') === undefined) return showForm(c, advisor, EMPTY_FORM)
  const asked = askedBrief(c)
  if (asked.ok) return showForm(c, advisor, { 'contaminants.0': 'row', ...writeForm(enteredOf(asked.brief)) })
  const answers = writeForm(asked.input)
  // What the form shows can be mended in it unasked; what it has no place for has to be said.
  const problems = checkForm(answers).problems.length > 0 ? [] : asked.problems
  return showForm(c, advisor, answers, { problems })
}

interface More {
  /** Problems are shown only where the person has asked for the advice. */
  readonly problems?: readonly Problem[]
  /** The field to begin with. */
  readonly focus?: string
  readonly imported?: { readonly typed: string; readonly wrong: string }
}

/** The form with these answers; 422 where there are problems to show. */
export async function showForm(c: Context, advisor: Advisor, answers: Answers, more: More = {}) {
  const { problems = [], imported, focus } = more
  const checked = checkForm(answers)
  const { brief } = checked
  const advice = brief ? await advisor.asking(brief) : null
  const { formPath } = checked.read
  const page = (
    <BriefPage
      sheet={sheetOf(answers, checked, problems, focus)}
      problems={problems}
      packed={brief ? packBrief(enteredOf(brief)) : null}
      demos={demoLinks}
      headline={advice}
      needed={neededIn(checked)}
      next={advice?.missing.map((one) => ({ ...one, href: `#${formPath(one.path)}` })) ?? null}
      {...(imported ? { imported } : {})}
    />
  )
  if (c.req.method === 'GET') sameAgain(c)
  return showPage(c, page, problems.length > 0 ? 422 : 200)
}
