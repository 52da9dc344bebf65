import type { Context } from 'hono'
import { HandoutPage } from '../../../../views/exercises/handout-page.tsx'
import { ListPage } from '../../../../views/exercises/list-page.tsx'
import type { Exercise } from '../../../exercises/exercise.ts'
import { EXERCISES } from '../../../exercises/list.ts'
import type { Advisor } from '../../advisor.ts'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'
import { demoLinks } from '../../shown/demo-links.ts'
import { type AskedSitting, askedSitting, handsOf } from '../../shown/exercise-sitting.ts'
import { today } from '../../today.ts'

/** All exercises, and those of the brief in the address; as a handout where one is asked for. */
export const exerciseListPage = (advisor: Advisor) => async (c: Context) => {
  const asked = await askedSitting(c, advisor)
  if (c.req.query('handout') === '1') return handout(c, asked)
  const listed = (exercise: Exercise) => ({
    id: exercise.id,
    title: exercise.title(asked.voice),
    about: exercise.about(asked.voice),
    questions: exercise.count,
    timed: exercise.timed,
    done: asked.done.some(({ id }) => id === exercise.id),
  })
  return showPage(
    c,
    <ListPage
      sitting={asked.sitting}
      lesson={asked.lesson.length > 0 ? asked.order.map(listed) : []}
      standard={EXERCISES.map(listed)}
      own={asked.own.map(listed)}
      briefTitle={asked.brief?.title ?? null}
      demos={demoLinks}
      room={handsOf(asked)}
    />,
  )
}

function handout(c: Context, { voice, order, lesson, find }: AskedSitting) {
  const only = c.req.queries('only') ?? []
  const chosen = only.length > 0 ? only.flatMap((id) => find(id) ?? []) : order
  const planned = (id: string) => lesson.find((part) => part.id === id)
  const printedOn = today()
  sameAgain(c)
  return showPage(
    c,
    <HandoutPage
      exercises={chosen.map(({ id, title, rests, questions }) => ({
        id,
        title: title(voice),
        rests,
        questions: questions(voice),
        minutes: planned(id)?.minutes ?? null,
        note: planned(id)?.note ?? '',
      }))}
      answers={c.req.query('answers') === '1'}
      pictures={only.length > 0}
      withRests={voice.level === 'full'}
      printedOn={printedOn}
    />,
  )
}
