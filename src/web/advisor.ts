import type { Advice, Brief } from '../contract/index.ts'

export type Advise = (brief: Brief) => Promise<Advice>

/** Advice depends on the brief alone, so the pages about one brief share one computation. */
const KEPT = 24

/** The same function with its last answers kept; a failed one is not. */
export function remembering(advise: Advise): Advise {
  const kept = new Map<string, Promise<Advice>>()
  return (brief) => {
    const key = JSON.stringify(brief.given)
    const answer = kept.get(key) ?? advise(brief)
    kept.delete(key)
    kept.set(key, answer)
    answer.catch(() => kept.delete(key))
    const oldest = kept.size > KEPT ? kept.keys().next().value : undefined
    if (oldest !== undefined) kept.delete(oldest)
    return answer
  }
}
