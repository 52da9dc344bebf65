import type { Context } from 'hono'
import { RegisterPage } from '../../../../views/register/register-page.tsx'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'

/** The hazard register of the brief in the address. */
export const registerPage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  sameAgain(c)
  return showPage(c, <RegisterPage advice={advice} title={brief.title} packed={packed} />)
}
