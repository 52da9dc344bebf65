import { parseArgs } from 'node:util'
import { loadRulebook } from '../advice/book/rulebook.ts'
import { wouldHaveFound } from '../advice/found/fragment.ts'
import { advise } from '../advise.ts'
import { parseBrief, parseFragment } from '../brief/index.ts'
import type { BriefInput } from '../contract/index.ts'
import { InputError, readJson } from './input.ts'
import { measured } from './measured.ts'
import { fragmentText } from './text/fragment-text.ts'

/** Quick advice on a brief as given; null where it is refused. */
async function adviseGiven(given: BriefInput) {
  const parsed = parseBrief(given)
  return parsed.ok ? advise(parsed.brief, { withoutChanges: true, withoutMissing: true }) : null
}

/** gritwise fragment BRIEF.json --material M --shape S --size MM [--length MM] [--face MM2] [--json] */
export async function fragmentCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      material: { type: 'string' },
      shape: { type: 'string' },
      size: { type: 'string' },
      length: { type: 'string' },
      face: { type: 'string' },
      placement: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  })
  const [path, ...more] = positionals
  if (!path || more.length > 0)
    throw new InputError('fragment takes one brief: a file, or - for standard input')
  const { material, shape, placement } = values
  if (!material || !values.size) throw new InputError('fragment needs --material and --size')
  const given = {
    material,
    shape,
    placement,
    sizeMm: measured('size', values.size, 'mm'),
    lengthMm: measured('length', values.length, 'mm'),
    faceMm2: measured('face', values.face, 'mm²'),
  }
  const fragment = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined))
  const parsed = parseFragment(await readJson(path), fragment)
  if (!parsed.ok) {
    const lines = parsed.problems.map(({ path: field, message }) => `  ${field}: ${message}`)
    throw new InputError(`there are problems:\n${lines.join('\n')}`)
  }
  const answer = await wouldHaveFound(parsed.brief, parsed.piece, parsed.given, adviseGiven, loadRulebook())
  process.stdout.write(values.json ? `${JSON.stringify(answer, null, 2)}\n` : fragmentText(answer))
  return 0
}
