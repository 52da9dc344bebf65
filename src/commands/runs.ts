import { parseArgs } from 'node:util'
import { advise } from '../advise.ts'
import type { Brief, Problem, RunsAnswer } from '../contract/index.ts'
import { againstPrediction, LINKS, readRunsTable, readTrial } from '../runs/index.ts'
import { InputError, readText } from './input.ts'
import { loadBrief } from './load-brief.ts'
import { runsText } from './runs-text.ts'

/** gritwise runs RUNS.csv [--brief BRIEF.json [--machine ID]] [--link logit|probit] [--json] */
export async function runsCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      brief: { type: 'string' },
      machine: { type: 'string' },
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
  const answer = await heldAgainst(readTrial(read.rows, link), brief, values.machine ?? null)
  process.stdout.write(values.json ? `${JSON.stringify(answer, null, 2)}\n` : runsText(answer))
  return 0
}

async function heldAgainst(
  answer: RunsAnswer,
  brief: Brief | null,
  machine: string | null,
): Promise<RunsAnswer> {
  if (!brief) return answer
  const advice = await advise(brief, { withoutChanges: true, withoutMissing: true })
  return { ...answer, prediction: againstPrediction(answer.groups, advice, machine) }
}

/** Every problem, a line each; nothing was read. */
function problemText(problems: readonly Problem[]): string {
  const lines = problems.map(({ path, message }) => `  ${path ? `${path}: ` : ''}${message}`)
  return `the table of runs has ${lines.length} problem${lines.length === 1 ? '' : 's'}:\n${lines.join('\n')}`
}
