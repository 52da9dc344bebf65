import { advise } from '../../src/advise.ts'
import { parseBrief } from '../../src/brief/index.ts'

/** Advice in short on a brief as given. */
export async function advisedOn(given: unknown) {
  const parsed = parseBrief(given)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return advise(parsed.brief, { withoutChanges: true, withoutMissing: true, withoutRecords: true })
}
