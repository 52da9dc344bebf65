import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { RunsTyped } from '../../../../views/runs/props.ts'
import type { Brief } from '../../../contract/index.ts'
import type { Kind, Revision } from '../../../store/kept.ts'
import { askedRuns, briefOfTrial } from '../../asked/asked-runs.ts'
import { postedForm } from '../../asked/form-answers.ts'
import { refuse } from '../../asked/refusal.ts'
import { inShortSchema } from '../../kept-store/bodies.ts'
import { ownOf } from '../../kept-store/own-things.ts'
import type { Answers } from '../../serving/door.ts'
import { machineName } from '../../shown/trial.ts'

/** What was sent to be kept; its fields send the same once more. */
export interface InHand {
  readonly kind: Kind
  readonly title: string
  readonly body: unknown
  readonly versions: Revision['versions']
  readonly fields: Readonly<Record<string, string>>
}

/** A posted form's fields as text; what is no text is empty. */
export async function sent(c: Context) {
  const form = await postedForm(c)
  return (name: string) => (typeof form[name] === 'string' ? form[name] : '')
}

/** What a form sends to be kept: a brief, its advice of today, the machines and materials of one's own in it, or test runs. */
export async function inHand(c: Context, pages: Answers): Promise<InHand> {
  const said = await sent(c)
  const packed = said('b')
  switch (said('what')) {
    case 'runs':
      return runs(c)
    case 'advice':
      return advice(c, packed, pages)
    case 'own':
      return own(packed)
    default: {
      const { title, given } = briefIn(packed)
      return { kind: 'brief', title, body: given, versions: null, fields: { b: packed } }
    }
  }
}

function briefIn(packed: string): Brief {
  const { brief } = briefOfTrial(packed)
  if (!brief) throw new HTTPException(400, { message: 'No brief was sent to be kept.' })
  return brief
}

async function advice(c: Context, packed: string, pages: Answers): Promise<InHand> {
  briefIn(packed)
  const url = new URL(`/advice/in-short.json?b=${packed}`, c.req.url)
  const answer = await pages(new Request(url, { headers: { accept: 'application/json' } }))
  const said = (await answer.json()) as unknown
  if (answer.status !== 200) {
    const { problems } = said as { problems?: { path: string; message: string }[] }
    return refuse(problems ?? [{ path: 'b', message: `the advice was not worked out (${answer.status})` }])
  }
  const { title, versions, ...body } = inShortSchema.parse(said)
  return { kind: 'advice', title, body, versions, fields: { b: packed, what: 'advice' } }
}

function own(packed: string): InHand {
  const brief = briefIn(packed)
  const body = ownOf(brief.given)
  if (body.equipment.length + body.contaminants.length === 0)
    return refuse([{ path: 'b', message: 'the brief has no machine and no material of its own' }])
  const title = `Machines and materials of ${brief.title}`.slice(0, 200)
  return { kind: 'own', title, body, versions: null, fields: { b: packed, what: 'own' } }
}

async function runs(c: Context): Promise<InHand> {
  const { packed, brief, typed, rows, problems } = await askedRuns(c)
  if (problems.length > 0) return refuse(problems)
  const machines = [...new Set(rows.map(({ equipment }) => machineName(equipment)))].join(', ')
  const title = `${brief ? `${brief.title}: ` : ''}${machines}`.slice(0, 200)
  const body = { brief: brief?.given ?? null, typed }
  return { kind: 'runs', title, body, versions: null, fields: runsFields(packed, typed) }
}

/** What a form sends of test runs, to be read or kept again. */
export const runsFields = (packed: string | null, typed: RunsTyped): Record<string, string> => ({
  ...(packed ? { b: packed } : {}),
  what: 'runs',
  ...typed,
})
