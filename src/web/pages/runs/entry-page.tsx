import { createHash } from 'node:crypto'
import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { EntryPage } from '../../../../views/runs/entry-page.tsx'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import { type Entry, readRunsTable, rowsOfEntry, runsTable } from '../../../runs/index.ts'
import type { Advisor } from '../../advisor.ts'
import { type Carried, entryOfForm, entryOfPlan } from '../../asked/asked-entry.ts'
import { type AskedRuns, briefOfTrial, clauseOf, NOTHING_TYPED } from '../../asked/asked-runs.ts'
import { formAnswers } from '../../asked/form-answers.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { carriedOut } from './plan-page.tsx'
import { showRead, showRuns } from './runs-page.tsx'

interface Shown {
  readonly packed: string
  readonly title: string
  readonly kept: string
  readonly entry: Entry
  readonly carried: Carried
}

function showEntry(c: Context, shown: Shown, problems: readonly (readonly [string, string])[]) {
  const words = pieceWords(shown.entry.fixed, materialNames)
  return showPage(
    c,
    <EntryPage {...shown} pieceWords={words} problems={new Map(problems)} />,
    problems.length > 0 ? 422 : 200,
  )
}

/** The pieces of a plan, to be answered one by one at the line. */
export const entryPage = (advisor: Advisor) => async (c: Context) => {
  const { packed, brief, plan } = await carriedOut(c, advisor)
  const kept = createHash('sha256').update(JSON.stringify(plan.pieces)).digest('base64url').slice(0, 12)
  return showEntry(c, { packed, title: brief.title, kept, ...entryOfPlan(plan) }, [])
}

/** All entries sent: what they show, or which are still open. */
export const sendEntry = (advisor: Advisor) => async (c: Context) => {
  const answers = await formAnswers(c)
  const { packed, brief } = briefOfTrial(answers.b ?? '')
  const read = entryOfForm(answers)
  if (!read || packed === null || !brief)
    throw new HTTPException(400, {
      message: 'The entries did not arrive whole. Go back and send them again.',
    })
  const { rows, problems } = rowsOfEntry(read.entry)
  const kept = /^[\w-]{1,40}$/.test(answers.kept ?? '') ? answers.kept! : 'entry'
  const shown = { packed, title: brief.title, kept, ...read }
  if (problems.length > 0)
    return showEntry(
      c,
      shown,
      problems.map(({ path, message }) => [path, message] as const),
    )
  const typed = {
    ...NOTHING_TYPED,
    table: runsTable(rows),
    ...Object.fromEntries(read.carried.filter(([name]) => name === 'machine' || name.startsWith('clause'))),
  }
  // Read back from the table: what is shown is what the file holds.
  const back = readRunsTable(typed.table, {
    ownMaterials: brief.contaminants.map(({ material }) => material),
  })
  const clause = clauseOf(typed)
  const asked: AskedRuns = {
    packed,
    brief,
    typed,
    rows: back.ok ? back.rows : [],
    clause: clause.clause,
    problems: back.ok ? clause.problems : back.problems,
  }
  if (asked.problems.length > 0) return showRuns(c, asked, null, null)
  return showRead(c, advisor, asked, kept)
}
