import type { Hono } from 'hono'
import {
  exportKept,
  historyPage,
  importKept,
  keepBrief,
  keptPage,
  restoreRevision,
  takeAway,
  within,
} from '../pages/kept/kept-pages.tsx'
import type { Keeping } from './keeping.ts'
import type { Door } from './who.ts'

/** The addresses of what is kept. */
export function keptRoutes(app: Hono, keeping: Keeping, door: Door): void {
  const letIn = within(keeping, door)
  app.get('/kept', letIn(keptPage))
  app.post('/kept', letIn(keepBrief))
  app.get('/kept/export.json', letIn(exportKept))
  app.post('/kept/import', letIn(importKept))
  app.get('/kept/:id', letIn(historyPage))
  app.post('/kept/:id', letIn(keepBrief))
  app.post('/kept/:id/restore', letIn(restoreRevision))
  app.post('/kept/:id/away', letIn(takeAway))
}
