import { parseArgs } from 'node:util'
import { comparisonWords } from '../../views/compare/added-words.ts'
import { pieceShort } from '../../views/words/contaminant.ts'
import { advise } from '../advise.ts'
import { asData } from '../compare/as-data.ts'
import { type Comparison, compare } from '../compare/comparison.ts'
import { atRate, readRate } from '../compare/false-rejects.ts'
import type { Brief } from '../contract/index.ts'
import { InputError } from './input.ts'
import { loadBrief } from './load-brief.ts'
import { comparisonText } from './text/compare-text.ts'
import { materialNames as names } from './text/names.ts'

/** gritwise compare BRIEF.json [OTHER.json] [--machines KEY,KEY] [--false-rejects "1 in 1000"] [--json] */
export async function compareCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      machines: { type: 'string', default: '' },
      'false-rejects': { type: 'string', default: '' },
      json: { type: 'boolean', default: false },
    },
  })
  const [path, otherPath, ...more] = positionals
  if (!path || more.length > 0)
    throw new InputError('compare takes one brief, or two to lay one pack beside another')
  if (path === '-' && otherPath === '-')
    throw new InputError('only one of the two briefs can be standard input')
  const { rate, problem } = readRate(values['false-rejects'])
  if (problem !== null) throw new InputError(`--false-rejects: ${problem.message}`)
  const keys = values.machines.split(',').filter((key) => key !== '')
  const laid = async (brief: Brief, mark: string) => {
    const at = atRate(brief, rate)
    return { mark, brief: at, advice: await advise(at, { withoutChanges: true, withoutMissing: true }) }
  }
  const how = {
    keys,
    given: {},
    wordsOf: (piece: Comparison['wanted'][number]['piece']) => pieceShort(piece, names),
    ofMaterial: (id: string) => names.get(id) ?? id,
  }
  const brief = await loadBrief(path)
  const comparison = otherPath
    ? compare([await laid(brief, 'A'), await laid(await loadBrief(otherPath), 'B')], how)
    : compare([await laid(brief, '')], how)
  if (comparison === null) throw new InputError('no detector to compare stands at any point of this brief')
  const unknown = keys.filter((key) => !comparison.all.some((side) => side.key === key))
  if (unknown.length > 0)
    throw new InputError(
      `--machines: no machine ${unknown.join(', ')} stands here; there are ${comparison.all.map(({ key }) => key).join(', ')}`,
    )
  const pieces = comparison.wanted.map(({ piece }) => pieceShort(piece, names))
  const words = comparisonWords(comparison, pieces)
  process.stdout.write(
    values.json
      ? `${JSON.stringify(asData(comparison, words), null, 2)}\n`
      : `${comparisonText(comparison, pieces, words)}\n`,
  )
  return 0
}
