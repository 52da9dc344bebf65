import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'

/**
 * The JSON a program sent. Only `application/json` is taken: a page of another site cannot send that
 * without asking first. Throws 415 and 400.
 */
export async function jsonBody(c: Context): Promise<unknown> {
  const type = (c.req.header('content-type') ?? '').split(';')[0]?.trim().toLowerCase() ?? ''
  if (type !== 'application/json')
    throw new HTTPException(415, {
      message: `send content-type: application/json; ${type === '' ? 'none' : type} was given`,
    })
  const text = await c.req.text()
  try {
    return JSON.parse(text)
  } catch (error) {
    throw new HTTPException(400, { message: `the body is not readable JSON: ${(error as Error).message}` })
  }
}
