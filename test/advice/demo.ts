import type { AdviseGiven } from '../../src/advice/change/advise-given.ts'
import { type AdviseOptions, advise } from '../../src/advise.ts'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { Brief, BriefInput } from '../../src/contract/index.ts'

export const QUICK: AdviseOptions = { withoutChanges: true, withoutMissing: true }

export function briefOf(given: unknown): Brief {
  const parsed = parseBrief(given)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return parsed.brief
}

/** A demo brief as given, to be changed and parsed. */
export const demoInput = (id: string): BriefInput =>
  structuredClone(demos.find((demo) => demo.id === id)!.brief)

export const demoBrief = (id: string): Brief => briefOf(demoInput(id))

export const quickGiven: AdviseGiven = async (given) => {
  const parsed = parseBrief(given)
  return parsed.ok ? advise(parsed.brief, QUICK) : null
}
