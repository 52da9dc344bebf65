import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { AskPage } from '../../../../views/exercises/ask-page.tsx'
import { StartPage, SummaryPage } from '../../../../views/exercises/clock-pages.tsx'
import { exerciseLink } from '../../../../views/exercises/links.ts'
import { RevealPage } from '../../../../views/exercises/reveal-page.tsx'
import type { Advisor } from '../../advisor.ts'
import { showPage } from '../../show-page.ts'
import { askedSitting } from '../../shown/exercise-sitting.ts'
import { type Walk, walkThrough } from '../../shown/exercise-walk.ts'

/** One screen of an exercise: start, question, answer, reason or summary, as the address says. */
export const exercisePage = (advisor: Advisor) => async (c: Context) => {
  const asked = await askedSitting(c, advisor)
  const exercise = asked.find(c.req.param('id') ?? '')
  if (!exercise) throw new HTTPException(404, { message: 'There is no exercise of that name.' })
  const walk = walkThrough(
    exercise,
    asked,
    { query: c.req.query(), hands: c.req.queries('hand') ?? [] },
    Date.now(),
  )
  return walk.kind === 'elsewhere'
    ? c.redirect(exerciseLink(asked.sitting, exercise.id, walk.screen), 303)
    : showPage(c, screenOf(walk), walk.kind === 'ask' && walk.props.problem ? 422 : 200)
}

function screenOf(walk: Exclude<Walk, { kind: 'elsewhere' }>) {
  switch (walk.kind) {
    case 'start':
      return <StartPage {...walk.props} />
    case 'ask':
      return <AskPage {...walk.props} />
    case 'reveal':
      return <RevealPage {...walk.props} />
    case 'summary':
      return <SummaryPage {...walk.props} />
  }
}
