import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { PlanPage } from '../../../../views/plan/plan-page.tsx'
import { RecordSheetPage } from '../../../../views/plan/record-sheet-page.tsx'
import type { Plan } from '../../../contract/index.ts'
import type { Advisor } from '../../advisor.ts'
import { type AskedPlan, askedPlan } from '../../asked/asked-plan.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { today } from '../../today.ts'

/** A trial planned by the brief in the address. */
export const planPage = (advisor: Advisor) => async (c: Context) => {
  const asked = await askedPlan(c, advisor)
  return showPage(
    c,
    <PlanPage {...asked} title={asked.brief.title} names={materialNames} />,
    asked.problems.size > 0 ? 422 : 200,
  )
}

/** The plan that is carried out; 422 where there is none. */
export async function carriedOut(c: Context, advisor: Advisor): Promise<AskedPlan & { plan: Plan }> {
  const asked = await askedPlan(c, advisor)
  const { plan, problems } = asked
  if (plan?.chosen) return { ...asked, plan }
  const [message] = problems.values()
  throw new HTTPException(422, {
    message: message ?? plan?.words ?? 'Choose what the trial is to show first.',
  })
}

/** The record sheet on paper. */
export const recordSheetPage = (advisor: Advisor) => async (c: Context) => {
  const { brief, plan } = await carriedOut(c, advisor)
  return showPage(
    c,
    <RecordSheetPage title={brief.title} plan={plan} names={materialNames} printedOn={today()} />,
  )
}
