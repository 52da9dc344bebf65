import type { Context } from 'hono'
import { AdvicePage } from '../../../views/advice/advice-page.tsx'
import { falseRejectWords } from '../../../views/words/false-rejects.ts'
import { writeForm } from '../../brief/form.ts'
import type { Brief } from '../../contract/index.ts'
import type { Advisor } from '../advisor.ts'
import { askedBrief } from '../asked-brief.ts'
import { materialNames } from '../choices.ts'
import { doseLawOf } from '../dose-law.ts'
import { checkForm } from '../sheet.ts'
import { showForm } from './brief-page.tsx'

const today = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long' })

/** The advice on the brief in the address; the form with its problems where the brief is not whole. */
export const advicePage = (advisor: Advisor) => async (c: Context) => {
  const asked = askedBrief(c)
  if (!asked.ok) {
    const answers = writeForm(asked.input)
    return showForm(c, advisor, answers, { problems: checkForm(answers).problems })
  }
  return c.html(
    <AdvicePage
      advice={await advisor.whole(asked.brief)}
      title={asked.brief.title}
      names={materialNames}
      packed={asked.packed}
      pointLines={asked.brief.points.map(pointLine)}
      printedOn={c.req.query('print') === '1' ? today.format(new Date()) : null}
      doseLaw={doseLawOf(asked.brief.market)}
    />,
  )
}

function pointLine(point: Brief['points'][number]): string {
  const size = `${point.heightMm} × ${point.widthMm} × ${point.lengthMm} mm, ${point.speedMPerMin} m/min`
  const rejects = falseRejectWords(point.falseRejectsPerPack, point.packsPerMin, point.hoursPerDay)
  return `${size}; false rejects ${rejects}`
}
