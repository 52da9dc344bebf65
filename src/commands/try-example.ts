import type { Beside, Tried } from '../advice/book/rule-examples.ts'
import type { Rulebook } from '../advice/book/rule-schema.ts'
import type { SearchedGround } from '../advice/book/rule-scope.ts'
import { wouldHaveFound } from '../advice/found/fragment.ts'
import { advise } from '../advise.ts'
import { parseBrief, parseFragment } from '../brief/index.ts'
import { ratherTried } from '../compare/rather.ts'
import type { Advice, Brief, BriefInput, Contrast, FragmentAnswer, Problem } from '../contract/index.ts'

/** What is said of an example's brief: advice, two machines side by side, or whether a piece would have been found. */
export type SaidOfExample = Tried & (Advice | FragmentAnswer | { readonly contrasts: readonly Contrast[] })

const refused = (problems: readonly Problem[]): Error =>
  new Error(problems.map(({ path, message }) => `${path}: ${message}`).join('; '))

/** Runs what an example asks for under a book; throws on a brief or piece that is refused. */
export const tryExample =
  (book: Rulebook) =>
  async (
    input: unknown,
    search: SearchedGround | null,
    { fragment, compare }: Beside,
  ): Promise<SaidOfExample> => {
    if (fragment) return foundIn(book, input, fragment)
    const parsed = parseBrief(input)
    if (!parsed.ok) throw refused(parsed.problems)
    const searches = { withoutChanges: search !== 'change', withoutMissing: search !== 'missing' }
    const advice = await advise(parsed.brief, { book, ...searches })
    return compare ? comparedIn(book, parsed.brief, advice, compare) : advice
  }

async function foundIn(book: Rulebook, input: unknown, fragment: unknown): Promise<FragmentAnswer> {
  const parsed = parseFragment(input, fragment)
  if (!parsed.ok) throw refused(parsed.problems)
  const quick = async (given: BriefInput) => {
    const read = parseBrief(given)
    const less = { withoutChanges: true, withoutMissing: true, withoutRecords: true }
    return read.ok ? advise(read.brief, { book, ...less }) : null
  }
  return wouldHaveFound(parsed.brief, parsed.piece, parsed.given, quick, book)
}

/** Two machines at every point that has both. */
function comparedIn(book: Rulebook, brief: Brief, advice: Advice, [a, b]: readonly [string, string]) {
  const compared = advice.points.flatMap(({ options }, at) => {
    const [first, second] = [a, b].map((id) => options.find(({ equipment }) => equipment === id))
    return first && second ? [ratherTried(book, brief, advice, at, first, second)] : []
  })
  return {
    contrasts: compared.map(({ contrast }) => contrast),
    trace: { rules: compared.flatMap(({ rules }) => rules) },
  }
}
