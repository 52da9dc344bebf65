import { Hono } from 'hono'
import { methodNotAllowed } from 'hono/method-not-allowed'
import { advise } from '../advise.ts'
import { adviseBatch } from '../lines/advise-row.ts'
import { IN_MEMORY } from '../store/open.ts'
import { type Advise, remembering, under } from './advisor.ts'
import { adviceApi } from './api/advice.ts'
import { cardApi } from './api/card.ts'
import { compareApi } from './api/compare.ts'
import { fragmentApi } from './api/fragment.ts'
import { openapiDocument } from './api/openapi.ts'
import { planApi } from './api/plan.ts'
import { reportApi } from './api/report.ts'
import { runsApi } from './api/runs.ts'
import { notFound, onError, wrongMethod } from './failures.tsx'
import { houseOf } from './house-book.ts'
import { keepingIn } from './kept-store/keeping.ts'
import { keptRoutes } from './kept-store/kept-routes.ts'
import { workedHere } from './lines/table-work.ts'
import { adviceInShort } from './pages/advice/advice-in-short.ts'
import { advicePage } from './pages/advice/advice-page.tsx'
import { advicePart } from './pages/advice/advice-part.tsx'
import { comparePage } from './pages/advice/compare-page.tsx'
import { fragmentPage } from './pages/advice/fragment-page.tsx'
import { ratherPage } from './pages/advice/rather-page.tsx'
import { trailPage } from './pages/advice/trail-page.tsx'
import { briefFile } from './pages/brief/brief-file.ts'
import { briefPage } from './pages/brief/brief-page.tsx'
import { bringInBrief } from './pages/brief/bring-in-brief.ts'
import { examplesPage } from './pages/brief/examples-page.tsx'
import { headlinePart } from './pages/brief/headline-part.tsx'
import { sendBrief } from './pages/brief/send-brief.ts'
import { cardLayer, cardPicture, cardRuns } from './pages/card/card-files.ts'
import { cardPage } from './pages/card/card-page.tsx'
import { dialPage, dialPart, dialPicture } from './pages/classroom/dial-page.tsx'
import { exerciseListPage } from './pages/classroom/exercise-list-page.tsx'
import { exercisePage } from './pages/classroom/exercise-page.tsx'
import { exerciseRadiograph } from './pages/classroom/exercise-radiograph.ts'
import { exerciseRecordPage } from './pages/classroom/exercise-record-page.tsx'
import { glossaryPage } from './pages/classroom/glossary-page.tsx'
import { lessonPage } from './pages/classroom/lesson-page.tsx'
import { metalDetectorPage, metalDetectorPart } from './pages/classroom/metal-detector-page.tsx'
import { spotPage, spotPicture } from './pages/classroom/spot-page.tsx'
import { tradeOffsPage, tradeOffsPart } from './pages/classroom/trade-offs-page.tsx'
import { answerPage, keepAnswer, keepConfirmation } from './pages/record/answer-page.tsx'
import { checksPage, sheetPage } from './pages/record/checks-page.tsx'
import { registerPage } from './pages/record/register-page.tsx'
import { reportAsData, reportAsFile, reportPage } from './pages/record/report-page.tsx'
import { differencePage, pastedDifference } from './pages/rules/difference-page.tsx'
import { ruleBookPage, rulePage } from './pages/rules/rule-book-page.tsx'
import { rulesPage, rulesPart } from './pages/rules/rules-page.tsx'
import { entryPage, sendEntry } from './pages/runs/entry-page.tsx'
import { planPage, recordSheetPage } from './pages/runs/plan-page.tsx'
import { readRunsPage, runsFile, runsPage, trialSheetPage } from './pages/runs/runs-page.tsx'
import { gate } from './people/gate.ts'
import { door } from './serving/door.ts'
import { compressed } from './serving/dressed.ts'
import { tableRoutes } from './table-routes.ts'
import { markRoute } from './watched/route.ts'

/** The pages behind the door, answered in this thread and keeping nothing beyond it; the server answers them in workers (pool.ts). */
export function createApp(advises: Advise = advise, overlays: readonly string[] = []): Hono {
  const pages = createPages(advises, overlays)
  const keeping = keepingIn({ file: IN_MEMORY })
  const wayIn = { kind: 'this-machine' } as const
  keptRoutes(pages, keeping, wayIn, (request) => pages.fetch(request))
  return door(gate(wayIn, keeping, (request, env) => compressed((inner) => pages.fetch(inner, env))(request)))
}

/** Every address the program answers, with a company's own rule books (folders) laid over the house's. */
export function createPages(advises: Advise = advise, overlays: readonly string[] = []): Hono {
  const house = houseOf(overlays)
  const answers = overlays.length > 0 ? under(house.book(), advises) : advises
  const advisor = remembering(answers, house)
  const app = new Hono()
  app.use(markRoute)
  app.use(methodNotAllowed({ app, onMethodNotAllowed: wrongMethod }))
  app.onError(onError)
  app.notFound(notFound)

  app.get('/', briefPage(advisor))
  app.get('/brief', briefPage(advisor))
  app.get('/brief.json', briefFile)
  app.post('/brief/import', bringInBrief(advisor))
  app.get('/examples', examplesPage)

  app.get('/advice', advicePage(advisor))
  app.get('/advice/part', advicePart(advisor))
  app.get('/advice/in-short.json', adviceInShort(advisor))
  app.post('/advice', sendBrief(advisor))
  app.post('/advice/headline', headlinePart(advisor))
  app.get('/advice/trail', trailPage(advisor))
  app.get('/advice/rules', rulesPage(advisor))
  app.get('/advice/rules/part', rulesPart(advisor))
  app.get('/advice/rather', ratherPage(advisor))
  app.get('/advice/difference', differencePage(advisor))
  app.post('/advice/difference', pastedDifference(advisor))

  app.get('/register', registerPage(advisor))
  app.get('/register/answer', answerPage(advisor))
  app.post('/register/answer', keepAnswer(advisor))
  app.post('/register/confirm', keepConfirmation(advisor))
  app.get('/report', reportPage(advisor))
  app.get('/report/file', reportAsFile(advisor))
  app.get('/report/data.json', reportAsData(advisor))
  app.get('/checks', checksPage(advisor))
  app.get('/checks/drill', sheetPage(advisor, 'drill'))
  app.get('/checks/record', sheetPage(advisor, 'record'))

  app.get('/rules', ruleBookPage(advisor))
  app.get('/rules/:id', rulePage(advisor))
  app.get('/fragment', fragmentPage(answers, house))

  app.get('/compare', comparePage(advisor))
  app.get('/glossary', glossaryPage)
  app.get('/exercises', exerciseListPage(advisor))
  app.get('/exercises/lesson', lessonPage(advisor))
  app.get('/exercises/record', exerciseRecordPage(advisor))
  app.get('/exercises/dial', dialPage)
  app.get('/exercises/dial/part', dialPart)
  app.get('/exercises/dial/picture.png', dialPicture)
  app.get('/exercises/spot', spotPage)
  app.get('/exercises/spot/picture.png', spotPicture)
  app.get('/exercises/:id/radiograph.png', exerciseRadiograph)
  app.get('/exercises/:id', exercisePage(advisor))

  app.get('/trade-offs', tradeOffsPage)
  app.get('/trade-offs/part', tradeOffsPart)
  app.get('/trade-offs/metal-detector', metalDetectorPage)
  app.get('/trade-offs/metal-detector/part', metalDetectorPart)

  app.get('/card', cardPage)
  app.get('/card/picture.png', cardPicture)
  app.get('/card/layer.png', cardLayer)
  app.get('/card/runs.csv', cardRuns)

  app.get('/runs', runsPage)
  app.post('/runs', readRunsPage(advisor))
  app.post('/runs/table.csv', runsFile)
  app.post('/runs/sheet', trialSheetPage(advisor))
  app.get('/runs/enter', entryPage(advisor))
  app.post('/runs/enter', sendEntry(advisor))
  app.get('/plan', planPage(advisor))
  app.get('/plan/sheet', recordSheetPage(advisor))

  tableRoutes(app, workedHere({ atOnce: 1, work: (batch) => adviseBatch(answers, batch) }))

  app.post('/api/advice', adviceApi(advisor))
  app.post('/api/card', cardApi)
  app.post('/api/compare', compareApi(advisor))
  app.post('/api/fragment', fragmentApi(answers, house))
  app.post('/api/report', reportApi(advisor))
  app.post('/api/runs', runsApi(advisor))
  app.post('/api/plan', planApi(advisor))
  app.get('/api/openapi.json', openapiDocument)
  return app
}
