import { writeFile } from 'node:fs/promises'
import { parseArgs } from 'node:util'
import { loadRulebook } from '../advice/book/rulebook.ts'
import { advise } from '../advise.ts'
import { parseBrief } from '../brief/index.ts'
import type { Brief, Problem } from '../contract/index.ts'
import { changesSince } from '../report/changes.ts'
import { isReportData, otherVersions, type ReportData, reportDataSchema } from '../report/report-data.ts'
import { type ReportAsked, reportData, reportFile } from '../report/report-file.tsx'
import { packBrief } from '../web/asked/packed-brief.ts'
import { today } from '../web/today.ts'
import { InputError, readJson } from './input.ts'
import { Trouble, writeTrouble } from './output.ts'

/**
 * gritwise report BRIEF.json --out FILE.html [--short] [--json] [--date DAY] [--since EARLIER.json] [--rules DIR]:
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
  const given = await readJson(path)
  const kept = isReportData(given) ? dataOf(given, path) : null
  if (kept && (values.short || values.date || values.since))
    throw new InputError('an earlier report is made again as it was: leave out --short, --date and --since')
  const brief = briefOf(kept?.brief ?? given)
  const advice = await advise(brief, values.rules ? { book: loadRulebook(values.rules) } : {})
  const asked: ReportAsked = kept
    ? { date: kept.date, short: kept.short, changes: kept.changes }
    : {
        date: values.date ?? today(),
        short: values.short,
        changes: values.since
          ? changesSince(dataOf(await readJson(values.since), values.since), {
              brief: brief.given,
              versions: advice.versions,
            })
          : null,
      }
  const others = kept ? otherVersions(kept.versions, advice.versions) : []
  if (others.length > 0)
    process.stderr.write(`gritwise report: made by other versions, so it may differ: ${others.join('; ')}\n`)
  await write(values.out, reportFile(brief, advice, packBrief(brief.given), asked))
  if (values.json)
    await write(
      values.out.replace(/\.html$/, '.json'),
      `${JSON.stringify(reportData(brief, advice, asked), null, 2)}\n`,
    )
  process.stdout.write(`${values.out}\n`)
  return others.length > 0 ? 1 : 0
}

function dataOf(value: unknown, path: string): ReportData {
  const read = reportDataSchema.safeParse(value)
  if (read.success) return read.data
  const [issue] = read.error.issues
  throw new InputError(
    `${path} is not the JSON a report keeps: ${issue?.path.join('.') || 'the whole'}: ${issue?.message}`,
  )
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
