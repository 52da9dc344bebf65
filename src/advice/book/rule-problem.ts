/** A rule book that cannot be used: every problem found, one a line. */
export class RulebookError extends Error {
  readonly problems: readonly string[]

  constructor(problems: readonly string[]) {
    super(
      `${problems.length} problem${problems.length === 1 ? '' : 's'} in the rule book:\n${problems.join('\n')}`,
    )
    this.name = 'RulebookError'
    this.problems = problems
  }
}
