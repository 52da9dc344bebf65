import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { Answers } from '../../brief/form/form.ts'

/** A posted form, fields and files; 400 where it is not put together as a form. */
export async function postedForm(c: Context): Promise<Readonly<Record<string, string | File>>> {
  try {
    return await c.req.parseBody()
  } catch {
    throw new HTTPException(400, { message: 'The form did not arrive whole. Send it again.' })
  }
}

/** The answers of a posted form; files and repeated fields are no part of the brief. */
export async function formAnswers(c: Context): Promise<Answers> {
  return Object.fromEntries(
    Object.entries(await postedForm(c)).filter(
      (entry): entry is [string, string] => typeof entry[1] === 'string',
    ),
  )
}
