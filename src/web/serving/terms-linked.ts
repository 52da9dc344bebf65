import { linkTerms } from '../../../views/glossary/link-terms.ts'
import { leaveChange, withChanges } from '../text-first.ts'
import type { Answers } from './door.ts'

/** The glossary explains its words itself; on the brief each link would be one more stop between two fields. */
const LEFT_AS_THEY_ARE: ReadonlySet<string> = new Set(['/glossary', '/brief', '/'])

/** Pages with the first use of each word of the glossary linked to what it means; parts, files and paper stay as they are. */
export const termsLinked =
  (answers: Answers): Answers =>
  async (request) => {
    if (!LEFT_AS_THEY_ARE.has(new URL(request.url).pathname))
      leaveChange(request, (page, status) => (status === 200 ? linkTerms(page) : page))
    return withChanges(request, await answers(request))
  }
