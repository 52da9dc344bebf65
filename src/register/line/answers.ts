import { readMeasure } from '../../brief/form/measure.ts'
import type { Brief, Register } from '../../contract/index.ts'

/** A value of the register: what holds, and where it came from. */
export interface Held<T> {
  readonly value: T
  readonly from: 'filled' | 'entered'
  /** The reason a person gave; empty where nobody overruled. */
  readonly because: string
}

/**
 * The answers of a brief, asked by name. What overrules something that was filled in is kept, so that both are
 * printed; a number that cannot be read leaves what was filled in and says so in `unread`.
 */
export class Answers {
  readonly overruled: Register['overruled'] = []
  readonly unread: { question: string; message: string }[] = []
  readonly #given: ReadonlyMap<string, { answer: string; because: string }>
  readonly #confirmed: ReadonlyMap<string, string>
  readonly #seen = new Set<string>()

  constructor(brief: Brief) {
    this.#given = new Map(brief.answers.map(({ question, ...rest }) => [question, rest]))
    this.#confirmed = new Map(brief.confirmed.map(({ what, by, date }) => [what, `${by}, ${date}`]))
  }

  /** A word or sentence; `allowed` closes the list. */
  word<T extends string>(question: string, filled: T, allowed?: readonly T[]): Held<T> {
    const given = this.#given.get(question)
    if (!given) return { value: filled, from: 'filled', because: '' }
    if (allowed && !allowed.includes(given.answer as T)) {
      this.#unread(question, `answered ${JSON.stringify(given.answer)}; allowed: ${allowed.join(', ')}`)
      return { value: filled, from: 'filled', because: '' }
    }
    this.#note(question, filled, given)
    return { value: given.answer as T, from: 'entered', because: given.because }
  }

  /** Names out of a closed list, parted by commas; `none` for the empty list. */
  list(question: string, filled: string, allowed: readonly string[], none: string): readonly string[] {
    const names = (text: string) =>
      text
        .split(',')
        .map((name) => name.trim())
        .filter((name) => name !== '' && name !== none)
    const given = this.#given.get(question)
    const unknown = given ? names(given.answer).find((name) => !allowed.includes(name)) : undefined
    if (!given || unknown !== undefined) {
      if (unknown !== undefined)
        this.#unread(
          question,
          `answered ${JSON.stringify(unknown)}; allowed: ${[...allowed, none].join(', ')}`,
        )
      return names(filled)
    }
    this.#note(question, filled, given)
    return names(given.answer)
  }

  /** A number in the unit named, between its bounds. */
  number(
    question: string,
    filled: number,
    unit: string,
    [least, most]: readonly [number, number],
  ): Held<number> {
    const given = this.#given.get(question)
    if (!given) return { value: filled, from: 'filled', because: '' }
    const read = readMeasure(given.answer, unit)
    if (!read.ok || read.value < least || read.value > most) {
      const because = read.ok
        ? `${read.value} was given; allowed ${least} to ${most} ${unit}`.trim()
        : read.because
      this.#unread(question, because)
      return { value: filled, from: 'filled', because: '' }
    }
    this.#note(question, String(filled), given)
    return { value: read.value, from: 'entered', because: given.because }
  }

  /** Who confirmed an assumption and when; empty where nobody did. An answer of one's own confirms itself. */
  confirmedBy(what: string): string {
    return this.#confirmed.get(what) ?? (this.#given.has(what) ? 'set by a person' : '')
  }

  #unread(question: string, message: string): void {
    if (!this.#seen.has(question)) this.unread.push({ question, message })
    this.#seen.add(question)
  }

  #note(question: string, filled: string, given: { answer: string; because: string }): void {
    if (this.#seen.has(question) || filled === given.answer) return
    this.#seen.add(question)
    this.overruled.push({ question, filled, ...given })
  }
}
