import type { AdviseGiven } from '../advice/change/advise-given.ts'
import { parseBrief } from '../brief/index.ts'
import type { Advise } from './advisor.ts'

/** Quick advice on a brief as given; null where it is refused. */
export const adviseGiven =
  (answers: Advise): AdviseGiven =>
  async (given) => {
    const parsed = parseBrief(given)
    return parsed.ok ? answers(parsed.brief, { withoutChanges: true, withoutMissing: true }) : null
  }
