import { withoutRule, withThreshold } from '../../advice/book/other-book.ts'
import { pastedBook } from '../../advice/book/pasted-book.ts'
import { RulebookError } from '../../advice/book/rule-problem.ts'
import type { Rulebook } from '../../advice/book/rulebook.ts'
import { readMeasure } from '../../brief/form/measure.ts'
import type { House } from '../house-book.ts'

/** What a person asked of the book: one threshold moved, one rule out, or rules laid over it. */
export interface AskedBook {
  readonly threshold: string
  readonly value: string
  readonly without: string
  readonly pasted: string
}

export type OtherBook = { book: Rulebook } | { problem: string } | null

function changed(house: Rulebook, { threshold, value, without }: AskedBook): OtherBook {
  let book: Rulebook | null = house
  if (threshold !== '') {
    const given = house.thresholds.get(threshold)
    if (!given) return { problem: `The book has no threshold ${threshold}.` }
    const read = readMeasure(value, given.unit)
    if (!read.ok) return { problem: `Its new value: ${read.because}` }
    book = withThreshold(book, threshold, read.value)
  }
  if (without !== '' && book) book = withoutRule(book, without)
  return book ? { book } : { problem: `The book has no rule ${without}.` }
}

/** The other book that was asked for, or what is wrong with it; null where none was asked for. */
export function otherBook(house: House, asked: AskedBook): OtherBook {
  if (asked.pasted.trim() !== '') {
    const pasted = pastedBook(asked.pasted)
    if (!pasted.ok) return { problem: `Rules as JSON: ${pasted.problem}` }
    try {
      return { book: house.under(pasted.book) }
    } catch (error) {
      if (error instanceof RulebookError) return { problem: error.message }
      throw error
    }
  }
  return asked.threshold === '' && asked.without === '' ? null : changed(house.book(), asked)
}
