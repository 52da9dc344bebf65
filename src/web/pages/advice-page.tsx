import type { Context } from 'hono'
import { AdvicePage } from '../../../views/advice/advice-page.tsx'
import { falseRejectWords } from '../../../views/words/false-rejects.ts'
import { writeForm } from '../../brief/form.ts'
import type { Brief } from '../../contract/index.ts'
import type { Advise } from '../advisor.ts'
import { askedBrief } from '../asked-brief.ts'
import { materialNames } from '../choices.ts'
import { checkForm } from '../sheet.ts'
import { showForm } from './brief-page.tsx'

/** The advice on the brief in the address; the form with its problems where the brief is not whole. */
export const advicePage = (advise: Advise) => async (c: Context) => {
  const asked = askedBrief(c)
  if (!asked.ok) {
    const answers = writeForm(asked.input)
    return showForm(c, advise, answers, { problems: checkForm(answers).problems })
  }
  return c.html(
    <AdvicePage
      advice={await advise(asked.brief)}
      title={asked.brief.title}
      names={materialNames}
      packed={asked.packed}
      pointLines={asked.brief.points.map(pointLine)}
      print={c.req.query('print') === '1'}
    />,
  )
}

function pointLine(point: Brief['points'][number]): string {
  const size = `${point.heightMm} × ${point.widthMm} × ${point.lengthMm} mm, ${point.speedMPerMin} m/min`
  const rejects = falseRejectWords(point.falseRejectsPerPack, point.packsPerMin, point.hoursPerDay)
  return `${size}; false rejects ${rejects}`
}
