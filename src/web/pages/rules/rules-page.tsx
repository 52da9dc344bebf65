import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { wantedOf } from '../../../../views/advice/sizes/findings.ts'
import { RulesPage, RulesPart } from '../../../../views/trail/rules-page.tsx'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'

/** Every rule tried on one machine at one point, fired or not. */
async function triedRules(c: Context, advisor: Advisor) {
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  const point = advice.points[Number(c.req.query('point'))]
  const option = [...(point?.options ?? []), ...(point?.removals ?? [])].find(
    ({ equipment }) => equipment === c.req.query('equipment'),
  )
  if (!point || !option)
    throw new HTTPException(404, { message: 'This advice has no such machine at that point.' })
  const rules = advice.trace.rules.filter(
    (rule) =>
      (rule.equipment === option.equipment || rule.equipment === '') &&
      (rule.point === point.name || rule.point === ''),
  )
  const pieces = wantedOf(advice).map((piece) => pieceWords(piece, materialNames))
  return { advice, rules, packed, pieces, label: option.label, point: point.name }
}

export const rulesPage = (advisor: Advisor) => async (c: Context) => {
  const tried = await triedRules(c, advisor)
  sameAgain(c)
  return showPage(c, <RulesPage {...tried} />)
}

/** The same for the place on the advice page where it is opened. */
export const rulesPart = (advisor: Advisor) => async (c: Context) => {
  const { rules, packed, pieces } = await triedRules(c, advisor)
  return showPage(c, <RulesPart rules={rules} packed={packed} pieces={pieces} />)
}
