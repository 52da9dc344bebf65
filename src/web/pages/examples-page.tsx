import type { Context } from 'hono'
import { ExamplesPage } from '../../../views/examples-page.tsx'
import { demoLinks } from '../demo-links.ts'

export const examplesPage = (c: Context) => c.html(<ExamplesPage demos={demoLinks} />)
