import { HTTPException } from 'hono/http-exception'
import type { Problem } from '../../contract/index.ts'
import { firstProblems } from '../../intake/problem-list.ts'

/** What was sent has problems: as JSON for programs, in words on a page, 422 either way. */
export class Refusal extends HTTPException {
  readonly problems: readonly Problem[]

  constructor(problems: readonly Problem[]) {
    const told = firstProblems(problems)
    super(422, {
      message: told.map(({ path, message }) => `${path ? `${path}: ` : ''}${message}`).join('; '),
    })
    this.problems = told
  }
}

/** Ends the answer with problems; each names its field, what was given and what is allowed. */
export function refuse(problems: readonly Problem[]): never {
  throw new Refusal(problems)
}
