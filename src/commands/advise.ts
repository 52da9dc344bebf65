import { parseArgs } from 'node:util'
import { loadRulebook } from '../advice/rulebook.ts'
import { advise } from '../advise.ts'
import { adviceText } from './advice-text.ts'
import { InputError } from './input.ts'
import { loadBrief } from './load-brief.ts'

/** gritwise advise BRIEF.json [--json] [--reasons] [--rules DIR] */
export async function adviseCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      json: { type: 'boolean' },
      reasons: { type: 'boolean' },
      rules: { type: 'string', multiple: true },
    },
  })
  const [path, ...more] = positionals
  if (!path || more.length > 0)
    throw new InputError('advise takes one brief: a file, or - for standard input')
  const brief = await loadBrief(path)
  const advice = await advise(brief, values.rules ? { book: loadRulebook(values.rules) } : {})
  process.stdout.write(
    values.json ? `${JSON.stringify(advice, null, 2)}\n` : adviceText(brief, advice, values.reasons ?? false),
  )
  return 0
}
