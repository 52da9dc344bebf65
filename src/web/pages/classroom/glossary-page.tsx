import type { Context } from 'hono'
import { GlossaryPage } from '../../../../views/glossary/glossary-page.tsx'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'

/** The words of these pages, for screen or paper. */
export function glossaryPage(c: Context) {
  sameAgain(c)
  return showPage(c, <GlossaryPage print={c.req.query('print') === '1'} />)
}
