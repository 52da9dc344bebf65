import type { Rulebook } from '../advice/book/rulebook.ts'
import type { Advice, Brief } from '../contract/index.ts'
import { type House, houseOf } from './house-book.ts'
import { Kept } from './kept.ts'

export type Advise = (
  brief: Brief,
  options?: {
    readonly withoutChanges?: boolean
    readonly withoutMissing?: boolean
    readonly book?: Rulebook
  },
) => Promise<Advice>

export interface Advisor {
  /** The rule book behind all its answers. */
  readonly house: House
  /** The whole advice. */
  readonly whole: (brief: Brief) => Promise<Advice>
  /** The same without the searches for what would change it and what is missing, which take longest. */
  readonly quick: (brief: Brief) => Promise<Advice>
  /** The same with what is missing, for the form. */
  readonly asking: (brief: Brief) => Promise<Advice>
  /** Quick advice by another rule book; not kept. */
  readonly under: (brief: Brief, book: Rulebook) => Promise<Advice>
}

/** The same advice by a given book, unless another one is asked for. */
export const under =
  (book: Rulebook, advise: Advise): Advise =>
  (brief, options) =>
    advise(brief, { book, ...options })

/** Advice depends on the brief alone, so the pages about one brief share one computation. */
const KEPT_BYTES = 64 * 1024 * 1024
/** What an answer is taken for until it is there. */
const UNKNOWN_BYTES = 1024

/** Of long lists every so many entries are measured. */
const SAMPLE = 16

/** Bytes an advice takes, about: writing it out whole to measure it took longer than drawing a page of it. */
function roomOf({ trace, ...rest }: Advice): number {
  const { calculations, rules, ...others } = trace
  const written = (part: unknown) => 2 * JSON.stringify(part).length
  const sampled = (list: readonly unknown[]) => SAMPLE * written(list.filter((_, at) => at % SAMPLE === 0))
  return written(rest) + written(others) + sampled(calculations) + sampled(rules)
}

/** An advisor that keeps its last answers; a failed one is not kept. */
export function remembering(advise: Advise, house: House = houseOf()): Advisor {
  const kept = new Kept<Promise<Advice>>(KEPT_BYTES)
  const answer = (key: string, compute: () => Promise<Advice>) => {
    const found = kept.get(key)
    if (found) return found
    const made = compute()
    kept.set(key, made, UNKNOWN_BYTES)
    made.then(
      (advice) => kept.set(key, made, roomOf(advice)),
      () => kept.delete(key),
    )
    return made
  }
  const keyOf = (brief: Brief) => JSON.stringify(brief.given)
  const whole = (brief: Brief) => answer(keyOf(brief), () => advise(brief))
  const asking = (brief: Brief) =>
    kept.get(keyOf(brief)) ?? answer(`asking ${keyOf(brief)}`, () => advise(brief, { withoutChanges: true }))
  return {
    house,
    whole,
    asking,
    quick: (brief) =>
      kept.get(keyOf(brief)) ??
      kept.get(`asking ${keyOf(brief)}`) ??
      answer(`quick ${keyOf(brief)}`, () => advise(brief, { withoutChanges: true, withoutMissing: true })),
    under: (brief, book) => advise(brief, { withoutChanges: true, withoutMissing: true, book }),
  }
}
