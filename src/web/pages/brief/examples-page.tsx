import type { Context } from 'hono'
import { ExamplesPage } from '../../../../views/examples-page.tsx'
import { showPage } from '../../show-page.ts'
import { demoLinks } from '../../shown/demo-links.ts'

export const examplesPage = (c: Context) => showPage(c, <ExamplesPage demos={demoLinks} />)
