import type { Hono } from 'hono'
import {
  exportKept,
  historyPage,
  importKept,
  keepBrief,
  keptPage,
  restoreRevision,
  takeAway,
} from '../pages/kept/kept-pages.tsx'
import { addPerson, changePerson, peoplePage } from '../pages/people/people-page.tsx'
import { sendSignIn, signInPage, signOut } from '../pages/people/sign-in-page.tsx'
import { trailPage } from '../pages/people/trail-page.tsx'
import type { WayIn } from '../people/way-in.ts'
import { within } from '../people/within.ts'
import type { Keeping } from './keeping.ts'

/** The addresses of what is kept, and of who may get at it. */
export function keptRoutes(app: Hono, keeping: Keeping, wayIn: WayIn): void {
  const letIn = within(keeping)
  app.get('/kept', letIn('reader', keptPage))
  app.post('/kept', letIn('author', keepBrief))
  app.get('/kept/export.json', letIn('reader', exportKept))
  app.post('/kept/import', letIn('author', importKept))
  app.get('/kept/:id', letIn('reader', historyPage))
  app.post('/kept/:id', letIn('author', keepBrief))
  app.post('/kept/:id/restore', letIn('author', restoreRevision))
  app.post('/kept/:id/away', letIn('author', takeAway))

  app.get('/trail', letIn('reader', trailPage))
  if (wayIn.kind === 'this-machine') return
  app.get('/people', letIn('administrator', peoplePage))
  app.post('/people', letIn('administrator', addPerson))
  app.post('/people/change', letIn('administrator', changePerson))
  if (wayIn.kind === 'proxy') return
  app.get('/sign-in', signInPage)
  app.post('/sign-in', sendSignIn(keeping))
  app.post('/sign-out', letIn('reader', signOut))
}
