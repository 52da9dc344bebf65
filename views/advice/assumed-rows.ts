import type { Advice } from '../../src/contract/advice.ts'
import { grouped } from '../words/grouped.ts'
import { fieldWords, pathWords } from '../words/path.ts'

type Assumed = Advice['assumed'][number]

/** Assumptions that say the same of several points or contaminants, said once. */
export interface AssumedRow extends Assumed {
  readonly words: string
}

export function assumedRows(advice: Advice): AssumedRow[] {
  const rows = grouped(advice.assumed, ({ path, value, range, because }) =>
    JSON.stringify([path.replace(/\.\d+\./g, '.*.'), value, range, because]),
  )
  return [...rows.values()].flatMap((same) => {
    const [first] = same
    return first ? [{ ...first, words: wordsOf(same, first, advice) }] : []
  })
}

function wordsOf(same: readonly Assumed[], first: Assumed, advice: Advice): string {
  if (same.length === 1) return pathWords(first.path, advice)
  const [list] = first.path.split('.')
  const rows = [...new Set(same.map(({ path }) => Number(path.split('.')[1])))]
  const words = fieldWords(first.path)
  const all = rows.length === (list === 'points' ? advice.points.length : advice.brief.contaminants.length)
  if (list === 'points')
    return `${words} at ${all ? 'every point' : rows.map((row) => `“${advice.points[row]?.name}”`).join(', ')}`
  return `${words} of ${all ? 'every contaminant' : `contaminants ${rows.map((row) => row + 1).join(', ')}`}`
}
