import type { Context } from 'hono'
import { LessonPage } from '../../../../views/exercises/lesson-page.tsx'
import { lessonLink } from '../../../../views/exercises/links.ts'
import { minutesOf, NINETY_MINUTES, writeLesson } from '../../../exercises/lesson.ts'
import { EXERCISES } from '../../../exercises/list.ts'
import type { Advisor } from '../../advisor.ts'
import { showPage } from '../../show-page.ts'
import { askedSitting } from '../../shown/exercise-sitting.ts'
import { lessonOf, typedLesson } from '../../shown/typed-lesson.ts'

/** The trainer's own page: which exercises, in which order, how long, and what to mind; all of it in the address. */
export const lessonPage = (advisor: Advisor) => async (c: Context) => {
  const asked = await askedSitting(c, advisor)
  const all = [...asked.own, ...EXERCISES]
  const typed = typedLesson(
    c.req.query(),
    all.map(({ id }) => id),
  )
  const titleOf = (id: string) => all.find((one) => one.id === id)?.title(asked.voice) ?? id
  const read = typed && lessonOf(typed, titleOf)
  if (read && read.problems.length === 0)
    return c.redirect(lessonLink({ ...asked.sitting, lesson: writeLesson(read.parts) }), 303)
  const place = (id: string) => asked.lesson.findIndex((part) => part.id === id)
  const part = (id: string) => asked.lesson[place(id)]
  return showPage(
    c,
    <LessonPage
      sitting={{ ...asked.sitting, present: false }}
      rows={all.map((exercise) => ({
        id: exercise.id,
        title: exercise.title(asked.voice),
        about: exercise.about(asked.voice),
        teaches: exercise.teaches(asked.voice),
        questions: exercise.count,
        timed: exercise.timed,
        ...(typed?.get(exercise.id) ?? {
          order: place(exercise.id) < 0 ? '' : String(place(exercise.id) + 1),
          minutes: part(exercise.id)?.minutes?.toString() ?? '',
          note: part(exercise.id)?.note ?? '',
        }),
      }))}
      problems={read?.problems ?? []}
      first={asked.order[0]?.id ?? null}
      minutes={minutesOf(asked.lesson)}
      proposed={writeLesson(NINETY_MINUTES)}
    />,
    read ? 422 : 200,
  )
}
