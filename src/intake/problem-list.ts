import type { Problem } from '../contract/index.ts'
import { MOST_PROBLEMS } from './bounds.ts'

/** The first problems; where there are more, the last entry says so. */
export function firstProblems(problems: readonly Problem[]): Problem[] {
  if (problems.length <= MOST_PROBLEMS) return [...problems]
  return [
    ...problems.slice(0, MOST_PROBLEMS - 1),
    { path: '', message: 'and more problems; mend these first' },
  ]
}
