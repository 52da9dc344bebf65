import type { Context } from 'hono'
import { ExamplesPage } from '../../../../views/examples-page.tsx'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'
import { demoLinks } from '../../shown/demo-links.ts'

export function examplesPage(c: Context) {
  sameAgain(c)
  return showPage(c, <ExamplesPage demos={demoLinks} />)
}
