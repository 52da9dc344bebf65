import { MOST_PROBLEMS } from '../../intake/bounds.ts'

/** A rule book that cannot be used: the problems found, one a line, the first of many. */
export class RulebookError extends Error {
  readonly problems: readonly string[]

  constructor(all: readonly string[]) {
    const problems = all.slice(0, MOST_PROBLEMS)
    const more = all.length > problems.length ? '\nand more; mend these first' : ''
    super(
      `${more ? 'more than ' : ''}${problems.length} problem${problems.length === 1 ? '' : 's'} in the rule book:\n${problems.join('\n')}${more}`,
    )
    this.name = 'RulebookError'
    this.problems = problems
  }
}
