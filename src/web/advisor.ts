import type { Advice, Brief } from '../contract/index.ts'

export type Advise = (brief: Brief, options?: { readonly withoutChanges?: boolean }) => Promise<Advice>

export interface Advisor {
  /** The whole advice. */
  readonly whole: (brief: Brief) => Promise<Advice>
  /** The same without the search for what would change it, which takes longest. */
  readonly quick: (brief: Brief) => Promise<Advice>
}

/** Advice depends on the brief alone, so the pages about one brief share one computation. */
const KEPT = 24

/** An advisor that keeps its last answers; a failed one is not kept. */
export function remembering(advise: Advise): Advisor {
  const kept = new Map<string, Promise<Advice>>()
  const answer = (key: string, compute: () => Promise<Advice>) => {
    const found = kept.get(key) ?? compute()
    kept.delete(key)
    kept.set(key, found)
    found.catch(() => kept.delete(key))
    const oldest = kept.size > KEPT ? kept.keys().next().value : undefined
    if (oldest !== undefined) kept.delete(oldest)
    return found
  }
  const whole = (brief: Brief) => answer(JSON.stringify(brief.given), () => advise(brief))
  return {
    whole,
    quick: (brief) =>
      kept.get(JSON.stringify(brief.given)) ??
      answer(`quick ${JSON.stringify(brief.given)}`, () => advise(brief, { withoutChanges: true })),
  }
}
