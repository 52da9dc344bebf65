import type { Hono } from 'hono'
import type { Workforce } from '../lines/read-lines.ts'
import { linesApi } from './api/lines.ts'
import { TableJobs } from './lines/table-jobs.ts'
import { linesFormPage, sendTable, tableFile, tablePage, tableProduct } from './pages/lines/lines-page.tsx'

/** The addresses of tables of products: their rows go to a workforce, whoever that is. */
export function tableRoutes(app: Hono, workforce: Workforce): TableJobs {
  const jobs = new TableJobs(workforce)
  app.get('/lines', linesFormPage)
  app.post('/lines', sendTable(jobs))
  app.get('/lines/:id', tablePage(jobs))
  app.get('/lines/:id/products.csv', tableFile(jobs))
  app.get('/lines/:id/product/:row', tableProduct(jobs))
  app.post('/api/lines', linesApi(workforce))
  return jobs
}
