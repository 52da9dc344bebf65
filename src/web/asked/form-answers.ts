import type { Context } from 'hono'
import type { Answers } from '../../brief/form/form.ts'

/** The answers of a posted form; files and repeated fields are no part of the brief. */
export async function formAnswers(c: Context): Promise<Answers> {
  const body = await c.req.parseBody()
  return Object.fromEntries(
    Object.entries(body).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  )
}
