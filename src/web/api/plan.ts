import type { Context } from 'hono'
import { parseBrief, problemsOf } from '../../brief/index.ts'
import { planRequestSchema } from '../../contract/index.ts'
import { planTrial } from '../../runs/index.ts'
import type { Advisor } from '../advisor.ts'
import { refuse } from '../asked/refusal.ts'
import { partsOfBody } from './json-body.ts'

const askedSchema = planRequestSchema.omit({ brief: true })
const KEYS = Object.keys(planRequestSchema.shape) as (keyof typeof planRequestSchema.shape)[]

/** POST { brief, contaminant, sizeMm?, … }, get the plan of a trial; 422 with the problems. */
export const planApi = (advisor: Advisor) => async (c: Context) => {
  const { brief: given, ...rest } = await partsOfBody(c, KEYS)
  const brief = parseBrief(given)
  const asked = askedSchema.safeParse(rest)
  if (!brief.ok || !asked.success)
    return refuse([
      ...(brief.ok
        ? []
        : brief.problems.map((one) => ({ ...one, path: one.path === '' ? 'brief' : `brief.${one.path}` }))),
      ...problemsOf(asked.error?.issues ?? [], rest, askedSchema),
    ])
  const planned = planTrial(brief.brief, await advisor.quick(brief.brief), asked.data)
  return planned.ok ? c.json(planned.plan) : refuse(planned.problems)
}
