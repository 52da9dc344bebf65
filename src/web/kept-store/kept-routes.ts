import type { Hono } from 'hono'
import { exportKept, importKept } from '../pages/kept/as-a-file.ts'
import { historyPage, takeIn } from '../pages/kept/history-page.tsx'
import { keep, keepRunsPage, restoreRevision, takeAway } from '../pages/kept/keep.tsx'
import { keptPage } from '../pages/kept/kept-page.tsx'
import { changePassword, passwordPage } from '../pages/people/password-page.tsx'
import { addPerson, changePerson, peoplePage } from '../pages/people/people-page.tsx'
import { sendSignIn, signInPage, signOut } from '../pages/people/sign-in-page.tsx'
import { trailPage } from '../pages/people/trail-page.tsx'
import type { WayIn } from '../people/way-in.ts'
import { within } from '../people/within.ts'
import type { Answers } from '../serving/door.ts'
import type { Keeping } from './keeping.ts'

/** The addresses of what is kept, and of who may get at it; `pages` answers what has to be thought about. */
export function keptRoutes(app: Hono, keeping: Keeping, wayIn: WayIn, pages: Answers): void {
  const { letIn, letLook } = within(keeping)
  app.get('/kept', letIn('reader', keptPage))
  app.post('/kept', letIn('author', keep(pages)))
  app.get('/kept/export.json', letIn('reader', exportKept))
  app.post('/kept/import', letIn('author', importKept))
  app.post('/kept/runs', letLook('author', keepRunsPage(pages)))
  app.get('/kept/:id', letIn('reader', historyPage))
  app.get('/kept/:id/into', letIn('reader', takeIn))
  app.post('/kept/:id', letIn('author', keep(pages)))
  app.post('/kept/:id/restore', letIn('author', restoreRevision))
  app.post('/kept/:id/away', letIn('author', takeAway))

  app.get('/trail', letIn('reader', trailPage))
  if (wayIn.kind === 'this-machine') return
  app.get('/people', letIn('administrator', peoplePage))
  app.post('/people', letIn('administrator', addPerson))
  app.post('/people/change', letIn('administrator', changePerson))
  if (wayIn.kind === 'proxy') return
  app.get('/people/password', letIn('reader', passwordPage))
  app.post('/people/password', letIn('reader', changePassword))
  app.get('/sign-in', signInPage)
  app.post('/sign-in', sendSignIn(keeping))
  app.post('/sign-out', letIn('reader', signOut))
}
