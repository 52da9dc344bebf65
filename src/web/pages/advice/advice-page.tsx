import type { Context } from 'hono'
import { AdvicePage } from '../../../../views/advice/advice-page.tsx'
import { partLink } from '../../../../views/advice/links.ts'
import { BossPage } from '../../../../views/advice/paper/boss-page.tsx'
import { PaperPage } from '../../../../views/advice/paper/paper-page.tsx'
import { pointLine } from '../../../../views/words/brief.ts'
import { moved } from '../../../advice/change/lever.ts'
import { writeForm } from '../../../brief/form/form-writing.ts'
import type { Advice, Brief } from '../../../contract/index.ts'
import type { Advisor } from '../../advisor.ts'
import { askedBrief } from '../../asked/asked-brief.ts'
import { packBrief } from '../../asked/packed-brief.ts'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { doseLawOf } from '../../shown/dose-law.ts'
import { problemsIn } from '../../shown/sheet.ts'
import { today } from '../../today.ts'
import { showForm } from '../brief/brief-page.tsx'

/** What `print=` asks for: one page for a boss, in short, everything. */
const PAPERS: ReadonlyMap<string, 'page' | 'short' | 'whole'> = new Map(
  Object.entries({
    page: 'page',
    short: 'short',
    '1': 'whole',
  } as const),
)

/** The advice on the brief in the address; the form with its problems where the brief is not whole. */
export const advicePage = (advisor: Advisor) => async (c: Context) => {
  const asked = askedBrief(c)
  if (!asked.ok) {
    const answers = writeForm(asked.input)
    return showForm(c, advisor, answers, { problems: problemsIn(answers, asked.problems) })
  }
  const { brief, packed } = asked
  const advice = await advisor.whole(brief)
  const paper = PAPERS.get(c.req.query('print') ?? '')
  const printedOn = today()
  const pointLines = brief.points.map(pointLine)
  const shown = { advice, packed, title: brief.title, names: materialNames, pointLines }
  const onPaper = { advice, brief, packed, title: brief.title, names: materialNames, printedOn }
  sameAgain(c)
  if (paper === 'page') return showPage(c, <BossPage {...onPaper} />)
  if (paper)
    return showPage(c, <PaperPage {...onPaper} short={paper === 'short'} doseLaw={doseLawOf(brief.market)} />)
  return showPage(
    c,
    <AdvicePage
      {...shown}
      changeLinks={advice.changes.map((change) => changeLink(brief, packed, advice, change))}
      hasDose={advice.points.some(({ options }) => options.some(({ family }) => family === 'xray'))}
    />,
  )
}

/** The whole advice on the brief with a change made; for a move of a machine, its reasons at the other point. */
function changeLink(
  brief: Brief,
  packed: string,
  advice: Advice,
  { inputs, equipment }: Advice['changes'][number],
): string {
  const [first] = inputs
  if (!first || !/^points\.\d+$/.test(first.path)) return `/advice?b=${packBrief(moved(brief.given, inputs))}`
  const there = advice.points.findIndex(({ name }) => name === first.to)
  return there < 0 ? '' : partLink({ packed }, 'why', there, equipment)
}
