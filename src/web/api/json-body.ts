import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { parseBrief } from '../../brief/index.ts'
import { unknownKeys } from '../../brief/problems.ts'
import type { Brief } from '../../contract/index.ts'
import { readJsonText } from '../../intake/json-text.ts'
import { refuse } from '../asked/refusal.ts'

/**
 * The JSON a program sent. Only `application/json` is taken: a page of another site cannot send that
 * without asking first. Throws 415, 400 and 422.
 */
export async function jsonBody(c: Context, mostBytes?: number): Promise<unknown> {
  const type = (c.req.header('content-type') ?? '').split(';')[0]?.trim().toLowerCase() ?? ''
  if (type !== 'application/json')
    throw new HTTPException(415, {
      message: `send content-type: application/json; ${type === '' ? 'none' : type} was given`,
    })
  const read = readJsonText(await c.req.text(), mostBytes)
  if (read.ok) return read.value
  if (read.kind === 'too-much') refuse([{ path: '', message: `the body: ${read.because}` }])
  throw new HTTPException(400, { message: `the body is ${read.because}` })
}

/** The brief a program sent as the whole body; 422 with its problems. */
export async function briefBody(c: Context): Promise<Brief> {
  const parsed = parseBrief(await jsonBody(c))
  return parsed.ok ? parsed.brief : refuse(parsed.problems)
}

/** The named parts of a body that carries more than a brief; 422 for a body of another shape or with other keys. */
export async function partsOfBody<const Key extends string>(
  c: Context,
  keys: readonly Key[],
  mostBytes?: number,
): Promise<Readonly<Partial<Record<Key, unknown>>>> {
  const body = (await jsonBody(c, mostBytes)) ?? {}
  const others = Object.keys(body).filter((key) => !(keys as readonly string[]).includes(key))
  if (others.length > 0) refuse(unknownKeys(others, [], keys))
  return body as Partial<Record<Key, unknown>>
}
