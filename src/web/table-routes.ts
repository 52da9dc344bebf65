import type { Hono } from 'hono'
import { linesApi } from './api/lines.ts'
import { TableJobs } from './lines/table-jobs.ts'
import type { TableWork } from './lines/table-work.ts'
import { linesFormPage, sendTable, tableFile, tablePage, tableProduct } from './pages/lines/lines-page.tsx'

/** The addresses of tables of products: their rows go to whoever works them out. */
export function tableRoutes(app: Hono, work: TableWork): TableJobs {
  const jobs = new TableJobs(work)
  app.get('/lines', linesFormPage)
  app.post('/lines', sendTable(jobs))
  app.get('/lines/:id', tablePage(jobs))
  app.get('/lines/:id/products.csv', tableFile(jobs))
  app.get('/lines/:id/product/:row', tableProduct(jobs))
  app.post('/api/lines', linesApi(work))
  return jobs
}
