import type { Context } from 'hono'
import { parseBrief } from '../../brief/index.ts'
import { planRequestSchema } from '../../contract/index.ts'
import { planTrial } from '../../runs/index.ts'
import type { Advisor } from '../advisor.ts'
import { jsonBody } from './json-body.ts'

const askedSchema = planRequestSchema.omit({ brief: true })

/** POST { brief, contaminant, sizeMm?, … }, get the plan of a trial; 422 with the problems. */
export const planApi = (advisor: Advisor) => async (c: Context) => {
  const body = await jsonBody(c)
  const { brief: given, ...rest } = (typeof body === 'object' && body !== null ? body : {}) as Record<
    string,
    unknown
  >
  const brief = parseBrief(given)
  const asked = askedSchema.safeParse(rest)
  const problems = [
    ...(brief.ok ? [] : brief.problems.map((one) => ({ ...one, path: `brief.${one.path}` }))),
    ...(asked.success
      ? []
      : asked.error.issues.map(({ path, message }) => ({ path: path.join('.'), message }))),
  ]
  if (!brief.ok || !asked.success) return c.json({ problems }, 422)
  const advice = await advisor.quick(brief.brief)
  const planned = planTrial(brief.brief, advice, asked.data)
  return planned.ok ? c.json(planned.plan) : c.json({ problems: planned.problems }, 422)
}
