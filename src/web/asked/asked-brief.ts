import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { parseBrief } from '../../brief/index.ts'
import type { Brief, Problem } from '../../contract/index.ts'
import { unpackBrief } from './packed-brief.ts'
import { refuse } from './refusal.ts'

export type AskedBrief =
  | { ok: true; packed: string; brief: Brief }
  | { ok: false; packed: string; input: unknown; problems: readonly Problem[] }

/** The brief in the address; 400 where the address does not carry one that can be read, 422 where it is too much. */
export function askedBrief(c: Context): AskedBrief {
  const packed = c.req.query('b') ?? ''
  const read = unpackBrief(packed)
  if (!('brief' in read)) {
    if (read.kind === 'too-much') refuse([{ path: '', message: `the brief in the address: ${read.because}` }])
    throw new HTTPException(400, {
      message: 'The address carries no readable brief: it may have been cut short. Copy the whole of it.',
    })
  }
  const parsed = parseBrief(read.brief)
  return parsed.ok
    ? { ok: true, packed, brief: parsed.brief }
    : { ok: false, packed, input: read.brief, problems: parsed.problems }
}

/** The same where only a good brief will do; its problems as a 422 otherwise. */
export function goodBrief(c: Context): { packed: string; brief: Brief } {
  const asked = askedBrief(c)
  return asked.ok ? asked : refuse(asked.problems)
}
