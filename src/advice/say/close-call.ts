import type { Brief, CloseCall } from '../../contract/index.ts'
import { runsToDemonstrate } from '../../numerics/binomial.ts'
import type { Close } from '../stages.ts'
import { mm, nameWords, wordList } from './words.ts'

/** What a test on the product is to show: the chance a size stands for, at the usual confidence. */
const SHOWN = { chance: 0.9, confidence: 0.95 } as const

/** The pieces of a test, each with its size; those without a size to find are left out. */
function pieceList(brief: Brief, contaminants: readonly number[]): string {
  return wordList(
    contaminants.flatMap((c) => {
      const size = brief.contaminants[c]!.mustFindMm
      return size === null ? [] : [`${nameWords(brief, c)} of ${mm(size)}`]
    }),
  )
}

/** A close call in words, with the test that would settle it. */
export function closeCallWords(brief: Brief, { first, second, contaminants, turned }: Close): CloseCall {
  const pieces = pieceList(brief, contaminants)
  const runs = runsToDemonstrate(SHOWN, 0)
  return {
    first: first.equipment,
    second: second.equipment,
    contaminants: [...contaminants],
    because: `The choice is close: ${first.label} comes first at the sizes that can be promised, ${second.label} nearer to the sizes that are expected. It hangs on ${pieces} with ${second.label}, and the stated assumptions do not settle it.`,
    test: turned
      ? `Test ${second.label} on your product, at line speed, with ${pieces} in the worst place: ${runs} of ${runs} found in fresh packs shows 9 in 10 with 95 % confidence, and then it meets what it is now only expected to meet. One miss leaves the order as it is.`
      : `Test both on your product, at line speed, with ${pieces} and the sizes around it in the worst place, ${runs} fresh packs a size: the one that finds the smaller size every time comes first.`,
  }
}
