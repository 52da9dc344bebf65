import { Hono } from 'hono'
import { compress } from 'hono/compress'
import { advise } from '../advise.ts'
import { type Advise, remembering } from './advisor.ts'
import { adviceApi } from './api/advice.ts'
import { openapiDocument } from './api/openapi.ts'
import { assetFile } from './assets.ts'
import { notFound, onError } from './failures.tsx'
import { bodySize, safeHeaders } from './guards.ts'
import { advicePage } from './pages/advice-page.tsx'
import { briefFile } from './pages/brief-file.ts'
import { briefPage } from './pages/brief-page.tsx'
import { bringInBrief } from './pages/bring-in-brief.ts'
import { examplesPage } from './pages/examples-page.tsx'
import { headlinePart } from './pages/headline-part.tsx'
import { rulesPage, rulesPart } from './pages/rules-page.tsx'
import { sendBrief } from './pages/send-brief.ts'
import { trailPage } from './pages/trail-page.tsx'

/** Every address the program answers. */
export function createApp(answers: Advise = advise): Hono {
  const advisor = remembering(answers)
  const app = new Hono()
  app.use(safeHeaders)
  app.use(compress())
  app.use(bodySize)
  app.onError(onError)
  app.notFound(notFound)

  app.get('/', briefPage(advisor))
  app.get('/brief', briefPage(advisor))
  app.get('/brief.json', briefFile)
  app.post('/brief/import', bringInBrief(advisor))
  app.get('/examples', examplesPage)

  app.get('/advice', advicePage(advisor))
  app.post('/advice', sendBrief(advisor))
  app.post('/advice/headline', headlinePart(advisor))
  app.get('/advice/trail', trailPage(advisor))
  app.get('/advice/rules', rulesPage(advisor))
  app.get('/advice/rules/part', rulesPart(advisor))

  app.post('/api/advice', adviceApi(advisor))
  app.get('/api/openapi.json', openapiDocument)
  app.get('/assets/:name', assetFile)
  return app
}
