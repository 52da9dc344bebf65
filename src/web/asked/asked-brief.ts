import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { parseBrief } from '../../brief/index.ts'
import type { Brief, BriefInput, Problem } from '../../contract/index.ts'
import { unpackBrief } from './packed-brief.ts'

export type AskedBrief =
  | { ok: true; packed: string; brief: Brief }
  | { ok: false; packed: string; input: BriefInput; problems: readonly Problem[] }

/** The brief in the address; 400 where the address does not carry one that can be read. */
export function askedBrief(c: Context): AskedBrief {
  const packed = c.req.query('b') ?? ''
  const read = unpackBrief(packed)
  if (read === null || typeof read.brief !== 'object' || read.brief === null)
    throw new HTTPException(400, {
      message: 'The address carries no readable brief: it may have been cut short. Copy the whole of it.',
    })
  const parsed = parseBrief(read.brief)
  return parsed.ok
    ? { ok: true, packed, brief: parsed.brief }
    : { ok: false, packed, input: read.brief as BriefInput, problems: parsed.problems }
}

/** The same where only a good brief will do; its first problem as a 422 otherwise. */
export function goodBrief(c: Context): { packed: string; brief: Brief } {
  const asked = askedBrief(c)
  if (asked.ok) return asked
  const [first] = asked.problems
  throw new HTTPException(422, {
    message: `The brief in the address has a problem: ${first?.path} ${first?.message}`,
  })
}
