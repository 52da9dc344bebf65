import { writeFile } from 'node:fs/promises'
import { resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { loadRulebook } from '../advice/book/rulebook.ts'
import { advise } from '../advise.ts'
import { parseBrief, problemsOf } from '../brief/index.ts'
import type { Brief, Problem } from '../contract/index.ts'
import { makeReport } from '../report/make-report.ts'
import {
  isReportData,
  otherVersions,
  type ReportData,
  reportDataSchema,
  reportDateSchema,
} from '../report/report-data.ts'
import type { TrialRows } from '../report/trial-in-report.ts'
import { readRunsTable } from '../runs/index.ts'
import { packBrief } from '../web/asked/packed-brief.ts'
import { today } from '../web/today.ts'
import { InputError, readJson, readText } from './input.ts'
import { Trouble, writeTrouble } from './output.ts'

/**
 * gritwise report BRIEF.json --out FILE.html [--runs RUNS.csv [--machine ID]] [--short] [--json] [--date DAY] [--since EARLIER.json] [--rules DIR]:
 * one self-contained document; with --json beside it what makes the same document again. That JSON is taken in place
 * of a brief, and then nothing else is chosen.
 */
export async function reportCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      out: { type: 'string' },
      short: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
      date: { type: 'string' },
      since: { type: 'string' },
      runs: { type: 'string' },
      machine: { type: 'string' },
      rules: { type: 'string', multiple: true },
    },
  })
  const [path, ...more] = positionals
  if (!path || more.length > 0)
    throw new InputError(
      'report takes one brief, or the JSON an earlier report kept: a file, or - for standard input',
    )
  if (!values.out?.endsWith('.html'))
    throw new InputError('report needs --out FILE.html, the document it writes')
  const beside = values.out.replace(/\.html$/, '.json')
  if (values.json && resolve(beside) === resolve(path))
    throw new InputError(
      `--json writes ${beside} beside the document, and that is the file that is read: name another --out`,
    )
  const read = await readJson(path)
  const kept = isReportData(read) ? dataOf(read, path) : null
  if (kept && (values.short || values.date || values.since || values.runs))
    throw new InputError(
      'an earlier report is made again as it was: leave out --short, --date, --since and --runs',
    )
  const given = briefOf(kept?.brief ?? read)
  const under = values.rules ? { book: loadRulebook(values.rules) } : {}
  const quick = { ...under, withoutChanges: true, withoutMissing: true }
  const { html, data, versions } = await makeReport(
    given,
    kept
      ? { date: kept.date, short: kept.short, changes: kept.changes, rows: kept.trial ?? null }
      : {
          date: dateOf(values.date ?? today()),
          short: values.short,
          rows: await rowsFrom(values.runs, values.machine, given),
          changes: values.since ? dataOf(await readJson(values.since), values.since) : null,
        },
    { advise: (brief) => advise(brief, quick), pack: packBrief },
  )
  const others = kept ? otherVersions(kept.versions, versions) : []
  if (others.length > 0)
    process.stderr.write(`gritwise report: made by other versions, so it may differ: ${others.join('; ')}\n`)
  await write(values.out, html)
  if (values.json) await write(beside, `${JSON.stringify(data, null, 2)}\n`)
  process.stdout.write(`${values.out}\n`)
  return others.length > 0 ? 1 : 0
}

/** The runs of a trial read from their table; null where none is given. */
async function rowsFrom(
  path: string | undefined,
  machine: string | undefined,
  brief: Brief,
): Promise<TrialRows | null> {
  if (path === undefined) return null
  const read = readRunsTable(await readText(path), {
    ownMaterials: brief.contaminants.map(({ material }) => material),
  })
  if (!read.ok)
    throw new InputError(`the table of runs has problems:\n${read.problems.map(lineOf).join('\n')}`)
  return { rows: read.rows, machine: machine ?? null }
}

function dataOf(value: unknown, path: string): ReportData {
  const read = reportDataSchema.safeParse(value)
  if (read.success) return read.data
  const [problem] = problemsOf(read.error.issues, value, reportDataSchema)
  throw new InputError(
    `${path} is not the JSON a report keeps: ${problem?.path || 'the whole'}: ${problem?.message}`,
  )
}

/** The day as --date gives it, within the bounds of the JSON that keeps it. */
function dateOf(given: string): string {
  const read = reportDateSchema.safeParse(given)
  if (read.success) return read.data
  throw new InputError(`--date: ${read.error.issues[0]?.message}`)
}

function briefOf(given: unknown): Brief {
  const parsed = parseBrief(given)
  if (parsed.ok) return parsed.brief
  throw new InputError(`the brief has problems:\n${parsed.problems.map(lineOf).join('\n')}`)
}

const lineOf = ({ path, message }: Problem) => `  ${path || 'brief'}: ${message}`

async function write(path: string, content: string): Promise<void> {
  try {
    await writeFile(path, content)
  } catch (error) {
    throw new Trouble(`cannot write ${path}: ${writeTrouble(error)}`)
  }
}
