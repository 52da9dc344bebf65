import type { Context } from 'hono'
import { AdvicePage } from '../../../views/advice/advice-page.tsx'
import { falseRejectWords } from '../../../views/words/false-rejects.ts'
import { writeForm } from '../../brief/form.ts'
import type { Brief } from '../../contract/index.ts'
import type { Advisor } from '../advisor.ts'
import { askedBrief } from '../asked-brief.ts'
import { materialNames } from '../choices.ts'
import { doseLawOf } from '../dose-law.ts'
import { drawnOnce } from '../drawn-once.ts'
import { checkForm } from '../sheet.ts'
import { showPage } from '../show-page.ts'
import { today } from '../today.ts'
import { showForm } from './brief-page.tsx'

/** The advice on the brief in the address; the form with its problems where the brief is not whole. */
export const advicePage = (advisor: Advisor) => async (c: Context) => {
  const asked = askedBrief(c)
  if (!asked.ok) {
    const answers = writeForm(asked.input)
    return showForm(c, advisor, answers, { problems: checkForm(answers).problems })
  }
  const { brief, packed } = asked
  const advice = await advisor.whole(brief)
  const paper = c.req.query('print')
  const short = paper === 'short'
  const printedOn = short || paper === '1' ? today() : null
  const page = drawnOnce(advice, `${packed} ${printedOn} ${short}`, () => (
    <AdvicePage
      advice={advice}
      title={brief.title}
      names={materialNames}
      packed={packed}
      pointLines={brief.points.map(pointLine)}
      printedOn={printedOn}
      short={short}
      doseLaw={doseLawOf(brief.market)}
    />
  ))
  return showPage(c, page)
}

function pointLine(point: Brief['points'][number]): string {
  const size = `${point.heightMm} × ${point.widthMm} × ${point.lengthMm} mm, ${point.speedMPerMin} m/min`
  const rejects = falseRejectWords(point.falseRejectsPerPack, point.packsPerMin, point.hoursPerDay)
  return `${size}; false rejects ${rejects}`
}
