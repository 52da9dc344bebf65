import type { Context } from 'hono'
import { AdvicePage } from '../../../../views/advice/advice-page.tsx'
import { reasonsAnchor } from '../../../../views/advice/links.ts'
import { falseRejectWords } from '../../../../views/words/false-rejects.ts'
import { moved } from '../../../advice/change/lever.ts'
import { writeForm } from '../../../brief/form/form-writing.ts'
import type { Advice, Brief } from '../../../contract/index.ts'
import type { Advisor } from '../../advisor.ts'
import { askedBrief } from '../../asked/asked-brief.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { drawnOnce } from '../../drawn-once.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { doseLawOf } from '../../shown/dose-law.ts'
import { problemsIn } from '../../shown/sheet.ts'
import { today } from '../../today.ts'
import { showForm } from '../brief/brief-page.tsx'

/** The advice on the brief in the address; the form with its problems where the brief is not whole. */
export const advicePage = (advisor: Advisor) => async (c: Context) => {
  const asked = askedBrief(c)
  if (!asked.ok) {
    const answers = writeForm(asked.input)
    return showForm(c, advisor, answers, { problems: problemsIn(answers, asked.problems) })
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
      changeLinks={advice.changes.map((change) => changeLink(brief, advice, change))}
      doseLaw={doseLawOf(brief.market)}
    />
  ))
  return showPage(c, page)
}

/** The whole advice on the brief with a change made; for a move of a machine, its reasons at the other point. */
function changeLink(brief: Brief, advice: Advice, { inputs, effect }: Advice['changes'][number]): string {
  const [first] = inputs
  if (!first || !/^points\.\d+$/.test(first.path)) return `/advice?b=${packBrief(moved(brief.given, inputs))}`
  const there = advice.points.findIndex(({ name }) => name === first.to)
  const machine = advice.points[there]?.options.find(({ label }) => effect.startsWith(label))
  return machine ? `#${reasonsAnchor(there, machine.equipment)}` : ''
}

function pointLine(point: Brief['points'][number]): string {
  const size = `${point.heightMm} × ${point.widthMm} × ${point.lengthMm} mm, ${point.speedMPerMin} m/min`
  const rejects = falseRejectWords(point.falseRejectsPerPack, point.packsPerMin, point.hoursPerDay)
  return `${size}; false rejects ${rejects}`
}
