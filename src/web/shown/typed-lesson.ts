import type { Problem } from '../../contract/index.ts'
import { type LessonPart, MOST_MINUTES } from '../../exercises/lesson.ts'

/** One line of the trainer's form, as it was typed. */
export interface TypedPart {
  readonly order: string
  readonly minutes: string
  readonly note: string
}

const MOST_ORDER = 99

/** "order-<id>", "minutes-<id>", "note-<id>" of a form; null where none was sent. */
export function typedLesson(
  query: Readonly<Record<string, string>>,
  ids: readonly string[],
): ReadonlyMap<string, TypedPart> | null {
  if (!Object.keys(query).some((name) => name.startsWith('order-'))) return null
  return new Map(
    ids.map((id) => [
      id,
      {
        order: (query[`order-${id}`] ?? '').trim(),
        minutes: (query[`minutes-${id}`] ?? '').trim(),
        note: query[`note-${id}`] ?? '',
      },
    ]),
  )
}

const isWhole = (text: string, most: number) =>
  /^\d+$/.test(text) && Number(text) >= 1 && Number(text) <= most

/** The lesson of a form in its order, or what is wrong with it. */
export function lessonOf(
  typed: ReadonlyMap<string, TypedPart>,
  titleOf: (id: string) => string,
): {
  parts: readonly LessonPart[]
  problems: readonly Problem[]
} {
  const problems: Problem[] = []
  const taken: (LessonPart & { order: number })[] = []
  for (const [id, { order, minutes, note }] of typed) {
    if (order !== '' && !isWhole(order, MOST_ORDER))
      problems.push({
        path: `order-${id}`,
        message: `Place of ${titleOf(id)}: a whole number from 1 to ${MOST_ORDER}`,
      })
    if (minutes !== '' && !isWhole(minutes, MOST_MINUTES))
      problems.push({
        path: `minutes-${id}`,
        message: `Minutes for ${titleOf(id)}: a whole number from 1 to ${MOST_MINUTES}`,
      })
    if (order !== '')
      taken.push({ id, minutes: minutes === '' ? null : Number(minutes), note, order: Number(order) })
  }
  const parts = taken
    .sort((a, b) => a.order - b.order)
    .map(({ id, minutes, note }) => ({ id, minutes, note }))
  return { parts, problems }
}
