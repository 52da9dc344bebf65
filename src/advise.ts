import { answer } from './advice/answer/answer.ts'
import { assess } from './advice/assess/assess.ts'
import { removedBySize } from './advice/assess/removed-by-size.ts'
import { loadRulebook, type Rulebook } from './advice/book/rulebook.ts'
import { versionsUnder } from './advice/book/versions.ts'
import type { AdviseGiven } from './advice/change/advise-given.ts'
import { whatWouldChange } from './advice/change/change.ts'
import { askerOf } from './advice/decide/ask-records.ts'
import { judgeAll } from './advice/decide/judge.ts'
import { missingInputs } from './advice/missing/missing.ts'
import { order } from './advice/order/ordered.ts'
import { recorded } from './advice/say/recorded.ts'
import { say } from './advice/say/say.ts'
import type { Asker } from './advice/stages.ts'
import { parseBrief } from './brief/index.ts'
import { NO_RECORDS, recordsOf } from './checks/records-of.ts'
import type { Advice, Brief } from './contract/index.ts'

export interface AdviseOptions {
  /** Leaves out the search for what would change the advice. */
  readonly withoutChanges?: boolean
  /** Leaves out the scoring of what is not given. */
  readonly withoutMissing?: boolean
  /** Leaves out the hazard register and the check plan. */
  readonly withoutRecords?: boolean
  /** The rule book to decide by; the house's own unless given. */
  readonly book?: Rulebook
}

let houseBook: Rulebook | null = null
const theHouseBook = () => (houseBook ??= loadRulebook())

/**
 * The one public function: a brief in, advice out. Each line is a stage, handed the whole of the one before:
 * physics works out the sizes, rules decide over facts, the order ranks, rules answer over what was ordered, and
 * only then is anything put into words; what is said can be walked back through the trace. Errors: a rule book that contradicts itself.
 */
export async function advise(brief: Brief, options: AdviseOptions = {}): Promise<Advice> {
  const book = options.book ?? theHouseBook()
  const assessed = assess(brief)
  const judged = await judgeAll(book, assessed)
  const ordered = order(judged)
  const answered = await answer(ordered)
  const said = say(answered, versionsUnder(book))
  const asker = askerOf(book, judged.facts)
  const changes = options.withoutChanges ? NO_CHANGES : await changesOf(brief, said, asker)
  const missing = options.withoutMissing ? [] : await missingOf(brief, said, asker)
  const records = options.withoutRecords ? NO_RECORDS : await recordsOf(brief, said, given(brief, asker))
  return { ...said, ...changes, missing, ...recorded(brief, said, records, asker) }
}

/** What register and check plan are handed: a way to ask the rules, what devices take out by size, two limits. */
const given = (brief: Brief, { ask, book }: ReturnType<typeof askerOf>) => ({
  ask,
  removedBySize: removedBySize(brief),
  limits: {
    seenPct: book.thresholds.get('longPiecesSeen')!.value,
    seenAtAllPct: book.thresholds.get('longPiecesSeenAtAll')!.value,
  },
})

type Said = ReturnType<typeof say>

const NO_CHANGES = { changes: [], changesNote: '', changesGrounds: [] }

const changesOf = (brief: Brief, said: Said, { book, askFound }: Asker) =>
  whatWouldChange(brief, said, againUnder(book), againUnder(trialOf(book)), askFound)

const missingOf = (brief: Brief, said: Said, { book, askFound }: Asker) =>
  missingInputs(brief, said.points, said.trace, againUnder(trialOf(book)), askFound)

/** The book as it is asked while a search tries things out. */
const trialOf = (book: Rulebook): Rulebook => ({ ...book, trial: true })

/** Advice on a changed brief under the same book, without searching on from there. */
const againUnder =
  (book: Rulebook): AdviseGiven =>
  async (given) => {
    const parsed = parseBrief(given)
    const quick = { book, withoutChanges: true, withoutMissing: true, withoutRecords: true }
    return parsed.ok ? advise(parsed.brief, quick) : null
  }
