import type { Context } from 'hono'
import { GlossaryPage } from '../../../../views/glossary/glossary-page.tsx'
import { showPage } from '../../show-page.ts'

/** The words of these pages, for screen or paper. */
export const glossaryPage = (c: Context) => showPage(c, <GlossaryPage print={c.req.query('print') === '1'} />)
