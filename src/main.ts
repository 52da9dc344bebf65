#!/usr/bin/env node
import { adviseCommand } from './commands/advise.ts'
import { cardCommand } from './commands/card.ts'
import { compareCommand } from './commands/compare.ts'
import { endingOf, watchOutput } from './commands/ending.ts'
import { fragmentCommand } from './commands/fragment.ts'
import { linesCommand } from './commands/lines.ts'
import { peopleCommand } from './commands/people.ts'
import { planCommand } from './commands/plan.ts'
import { reportCommand } from './commands/report.ts'
import { rulesCommand } from './commands/rules.ts'
import { runsCommand } from './commands/runs.ts'
import { serveCommand } from './commands/serve.ts'
import { workCommand } from './commands/work.ts'
import { quoted } from './contract/quoted.ts'

const VERBS: Record<string, { run: (args: string[]) => Promise<number>; usage: string; does: string }> = {
  serve: {
    run: serveCommand,
    usage:
      'serve [--port 8317] [--listen 127.0.0.1] [--name HOST] [--rules DIR] [--workers N] [--budget SECONDS] [--accounts | --user-header NAME] [--log error|info]',
    does: 'pages and API with the demo briefs, on request under your own rules',
  },
  advise: {
    run: adviseCommand,
    usage:
      'advise BRIEF.json [--json] [--reasons [--tree]] [--trail ID] [--rule ID] [--rather A B] [--rules DIR [--difference]]',
    does: 'advice as a table, or as JSON; with reasons, a calculation to its end, two machines side by side',
  },
  compare: {
    run: compareCommand,
    usage: 'compare BRIEF.json [OTHER.json] [--machines KEY,KEY] [--false-rejects SHARE] [--json]',
    does: 'machines side by side, or one pack against another: only what differs, what to ask, what to settle',
  },
  fragment: {
    run: fragmentCommand,
    usage: 'fragment BRIEF.json --material M --shape S --size MM [--length MM] [--face MM2] [--json]',
    does: 'would we have found this piece?',
  },
  card: {
    run: cardCommand,
    usage: 'card BRIEF.json --out DIR [--seed N] [--point I]',
    does: 'simulated test-card pictures as PNG, their runs as CSV and JSON',
  },
  plan: {
    run: planCommand,
    usage: 'plan BRIEF.json --contaminant N [--size MM] [--confidence 0.95] [--power 0.8] [--json]',
    does: 'which pieces, how many and where, to show a size on the product, and the chance that they do',
  },
  runs: {
    run: runsCommand,
    usage:
      'runs RUNS.csv [--brief BRIEF.json [--machine ID] [--write BRIEF.json]] [--link logit|probit] [--json]',
    does: 'test runs on the product: what was shown, with its confidence, and against the prediction',
  },
  lines: {
    run: linesCommand,
    usage: 'lines PRODUCTS.csv [--brief LINE.json] [--out FILE] [--json] [--workers N] [--rules DIR]',
    does: 'a table of products: advice and settings for each, the worst product of each line, the machines that take all',
  },
  work: {
    run: workCommand,
    usage: 'work [--workers N] [--rules DIR]',
    does: 'takes tables of products that programs on the same PostgreSQL (DATABASE_URL) were sent, batch by batch, on any machine',
  },
  report: {
    run: reportCommand,
    usage:
      'report BRIEF.json --out FILE.html [--runs RUNS.csv [--machine ID]] [--short] [--json] [--date DAY] [--since EARLIER.json] [--rules DIR]',
    does: 'hazard register and check plan as one self-contained document; --json keeps what makes it again',
  },
  people: {
    run: peopleCommand,
    usage:
      'people list | add NAME [--role reader|author|administrator] [--workspace W] [--by-proxy] | password NAME',
    does: 'who may sign in; a password is read from standard input',
  },
  rules: { run: rulesCommand, usage: 'rules check [DIR]', does: 'lint the rule book and run every example' },
}

function usageOf(verbs: readonly { readonly usage: string; readonly does: string }[]): string {
  const lines = verbs.map((v) => `  gritwise ${v.usage}\n      ${v.does}`)
  return `gritwise: from a brief of a food line to sourced advice on finding hard foreign bodies\n\n${lines.join('\n')}\n\n- reads standard input. Exit 0 done, 1 the work found a problem, 2 the input is wrong.\n`
}

async function main(argv: string[]): Promise<number> {
  const [word, ...rest] = argv
  if (word === undefined || word === 'help' || word === '--help' || word === '-h') {
    process.stdout.write(usageOf(Object.values(VERBS)))
    return word === undefined ? 2 : 0
  }
  const verb = Object.hasOwn(VERBS, word) ? VERBS[word] : undefined
  if (!verb) {
    process.stderr.write(`gritwise: no verb ${quoted(word)}; known: ${Object.keys(VERBS).join(', ')}\n`)
    return 2
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    process.stdout.write(usageOf([verb]))
    return 0
  }
  try {
    return await verb.run(rest)
  } catch (error) {
    const { said, code } = endingOf(error)
    process.stderr.write(`gritwise ${word}: ${said}\n`)
    return code
  }
}

watchOutput()
process.exitCode = await main(process.argv.slice(2))
