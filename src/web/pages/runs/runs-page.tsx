import type { Context } from 'hono'
import type { RunsPageProps } from '../../../../views/runs/props.ts'
import { RunsPage } from '../../../../views/runs/runs-page.tsx'
import { TrialSheetPage } from '../../../../views/runs/trial-sheet-page.tsx'
import type { RunsAnswer } from '../../../contract/index.ts'
import { beforeTrials, heldAgainst, readTrial } from '../../../runs/index.ts'
import type { Advisor } from '../../advisor.ts'
import { type AskedRuns, askedRuns, briefOfTrial, NOTHING_TYPED } from '../../asked/asked-runs.ts'
import { refuse } from '../../asked/refusal.ts'
import { showPage } from '../../show-page.ts'
import { afterTrial } from '../../shown/after-trial.ts'
import { materialNames } from '../../shown/choices.ts'
import { machineName, shownGroups } from '../../shown/trial.ts'
import { today } from '../../today.ts'

/** The trial read, and held against the prediction where a brief came with it. */
export async function readAsked(
  advisor: Advisor,
  { rows, clause, brief, typed }: Pick<AskedRuns, 'rows' | 'clause' | 'brief' | 'typed'>,
): Promise<RunsAnswer> {
  const trial = readTrial(rows, 'logit', clause)
  if (!brief) return trial
  return heldAgainst(trial, await advisor.quick(beforeTrials(brief)), typed.machine || null)
}

/** The empty page: a table in. */
export const runsPage = (c: Context) => {
  const { packed, brief } = briefOfTrial(c.req.query('b') ?? '')
  return showRuns(
    c,
    { packed, brief, typed: NOTHING_TYPED, rows: [], clause: null, problems: [] },
    null,
    null,
  )
}

/** A table sent: what it shows, or everything that is wrong with it. */
export const readRunsPage = (advisor: Advisor) => async (c: Context) => {
  const asked = await askedRuns(c)
  if (asked.problems.length > 0) return showRuns(c, asked, null, null)
  return showRead(c, advisor, asked, null)
}

export function showRuns(
  c: Context,
  asked: AskedRuns,
  answer: RunsAnswer | null,
  arrived: string | null,
  after: RunsPageProps['after'] = null,
) {
  const { packed, brief, typed, problems } = asked
  const page = (
    <RunsPage
      title={brief?.title ?? null}
      packed={packed}
      typed={typed}
      problems={problems}
      answer={answer}
      shown={answer ? shownGroups(answer) : []}
      names={materialNames}
      arrived={arrived}
      after={after}
    />
  )
  return showPage(c, page, problems.length > 0 ? 422 : 200)
}

/** A good table read and shown, with what it makes of the prediction. */
export async function showRead(c: Context, advisor: Advisor, asked: AskedRuns, arrived: string | null) {
  const answer = await readAsked(advisor, asked)
  const after = asked.brief ? await afterTrial(advisor, asked.brief, answer) : null
  return showRuns(c, asked, answer, arrived, after)
}

/** The same table as a file. */
export const runsFile = async (c: Context) => {
  const { typed } = await askedRuns(c)
  c.header('content-disposition', 'attachment; filename="test-runs.csv"')
  c.header('content-type', 'text/csv; charset=utf-8')
  return c.body(typed.table)
}

/** Two pages of paper that both sides sign. */
export const trialSheetPage = (advisor: Advisor) => async (c: Context) => {
  const asked = await askedRuns(c)
  if (asked.problems.length > 0) return refuse(asked.problems)
  const answer = await readAsked(advisor, asked)
  const { brief, clause, rows } = asked
  const machines = [...new Set(rows.map(({ equipment }) => equipment))].map(machineName)
  return showPage(
    c,
    <TrialSheetPage
      title={brief?.title ?? null}
      points={brief?.points ?? []}
      answer={answer}
      shown={shownGroups(answer)}
      clause={clause}
      machines={machines}
      nameOf={machineName}
      rows={rows}
      printedOn={today()}
    />,
  )
}
