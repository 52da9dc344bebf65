import { writeFile } from 'node:fs/promises'
import { parseArgs } from 'node:util'
import { advise } from '../advise.ts'
import type { Brief, Problem, RunsAnswer } from '../contract/index.ts'
import { beforeTrials, heldAgainst, LINKS, readRunsTable, readTrial, withRecords } from '../runs/index.ts'
import { InputError, readText } from './input.ts'
import { loadBrief } from './load-brief.ts'
import { runsText } from './text/runs-text.ts'

/** gritwise runs RUNS.csv [--brief BRIEF.json [--machine ID] [--write BRIEF.json]] [--link logit|probit] [--json] */
export async function runsCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      brief: { type: 'string' },
      machine: { type: 'string' },
      write: { type: 'string' },
      link: { type: 'string', default: 'logit' },
      json: { type: 'boolean', default: false },
    },
  })
  const [path, ...more] = positionals
  if (!path || more.length > 0)
    throw new InputError('runs takes one table of runs: a CSV file, or - for standard input')
  const link = LINKS.find((known) => known === values.link)
  if (!link) throw new InputError(`--link must be one of ${LINKS.join(', ')}; ${values.link} was given`)
  if (path === '-' && values.brief === '-')
    throw new InputError('runs and brief cannot both come from standard input')
  const brief = values.brief === undefined ? null : await loadBrief(values.brief)
  const read = readRunsTable(await readText(path), {
    ownMaterials: brief?.contaminants.map(({ material }) => material) ?? [],
  })
  if (!read.ok) throw new InputError(problemText(read.problems))
  const trial = readTrial(read.rows, link)
  const answer = brief ? await held(trial, brief, values.machine ?? null) : trial
  if (values.write !== undefined) {
    if (!brief || !answer.records)
      throw new InputError('--write needs --brief: it writes that brief with the trial in it')
    const next = withRecords(brief.given, answer.records)
    await writeFile(values.write, `${JSON.stringify(next, null, 2)}\n`)
  }
  process.stdout.write(values.json ? `${JSON.stringify(answer, null, 2)}\n` : runsText(answer))
  return 0
}

/** The trial held against the advice on its brief; the brief with what the trial adds, where it is to be written. */
async function held(answer: RunsAnswer, brief: Brief, machine: string | null): Promise<RunsAnswer> {
  const quick = { withoutChanges: true, withoutMissing: true, withoutRecords: true }
  return heldAgainst(answer, await advise(beforeTrials(brief), quick), machine)
}

/** Every problem, a line each; nothing was read. */
function problemText(problems: readonly Problem[]): string {
  const lines = problems.map(({ path, message }) => `  ${path ? `${path}: ` : ''}${message}`)
  return `the table of runs has ${lines.length} problem${lines.length === 1 ? '' : 's'}:\n${lines.join('\n')}`
}
