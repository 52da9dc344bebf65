import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { advise } from '../../../src/advise.ts'
import type { Advice } from '../../../src/contract/index.ts'
import { briefOf, QUICK } from '../demo.ts'

/** The house's own book. */
export const book = loadRulebook()

const advised = new Map<string, Promise<Advice>>()

/** The advice by the house's own book, worked out once for all files of tests that ask about the same brief. */
export function advisedByHouse(given: unknown): Promise<Advice> {
  const key = JSON.stringify(given)
  const found = advised.get(key) ?? advise(briefOf(given), { ...QUICK, book })
  advised.set(key, found)
  return found
}
