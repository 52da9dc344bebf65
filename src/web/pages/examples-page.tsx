import type { Context } from 'hono'
import { ExamplesPage } from '../../../views/examples-page.tsx'
import { demoLinks } from '../demo-links.ts'
import { showPage } from '../show-page.ts'

export const examplesPage = (c: Context) => showPage(c, <ExamplesPage demos={demoLinks} />)
