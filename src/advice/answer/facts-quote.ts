import type { Brief, Quote } from '../../contract/index.ts'
import { runsToDemonstrate } from '../../numerics/binomial.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { lowestOf } from '../order/quoted.ts'
import { mm } from '../say/words.ts'
import type { Quoted } from '../stages.ts'

/** What a quoted size should be shown with: nine in ten, at the usual confidence, none missed. */
const SHOWN = { chance: 0.9, confidence: 0.95 } as const

const OBTAINED_WORDS = {
  'in-product': 'in the product',
  empty: 'with an empty machine',
  unknown: 'in a way not stated',
} as const

const pieceWords = ({ shape = 'sphere', lengthMm, faceMm2 }: Quote) =>
  shape === 'wire'
    ? `wire of ${lengthMm ?? '…'} mm, in both orientations`
    : shape === 'flake'
      ? `flake of ${faceMm2 ?? '…'} mm², flat and on edge`
      : 'sphere'

/** Facts of a quoted size held against what is computed. */
export function factsOfQuote(brief: Brief, scope: string, { quote, finding, kind }: Quoted): FactSheet {
  const write = new FactWriter(scope, brief)
  const { obtained = 'unknown', runs, position, falseRejectsPerPack } = quote
  write.computed('quote.kind', kind)
  write.computed('quote.machine', quote.equipment)
  write.computed('quote.material', quote.material)
  write.computed('quote.shape', quote.shape ?? 'sphere')
  write.computed('quote.sizeMm', quote.sizeMm)
  write.computed('quote.compared', finding !== null)
  write.computed('quote.inProduct', obtained === 'in-product')
  write.computed('quote.obtained', OBTAINED_WORDS[obtained])
  write.computed('quote.piece', pieceWords(quote))
  write.computed('quote.positionStated', Boolean(position))
  write.computed('quote.runsStated', runs !== undefined)
  if (runs !== undefined) write.computed('quote.runs', runs)
  write.computed('quote.runsNeeded', runsToDemonstrate(SHOWN, 0))
  write.computed('quote.falseRejectsStated', falseRejectsPerPack !== undefined)
  if (!finding) return write.sheet()
  const { bestMm, cautiousMm, mustFindMm } = finding
  const lowest = lowestOf(finding)
  if (bestMm !== null) write.computed('quote.best', mm(bestMm))
  if (lowest !== null) write.computed('quote.lowest', mm(lowest))
  write.computed('quote.hasRange', bestMm !== null && lowest !== null && lowest < bestMm)
  write.computed('quote.hasPromise', cautiousMm !== null)
  if (cautiousMm !== null) write.computed('quote.promise', mm(cautiousMm))
  write.computed('quote.sizeAsked', mustFindMm !== null)
  if (mustFindMm !== null) write.computed('quote.mustFindMm', mustFindMm)
  return write.sheet()
}
