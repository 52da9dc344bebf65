import type { Brief, Finding } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { placeId } from '../facts/place-id.ts'
import { placesMissed } from '../order/places-missed.ts'
import { theMachine } from '../say/machine-words.ts'
import { sizedWords, wordList } from '../say/words.ts'
import type { Use } from '../stages.ts'
import { TEST_RUNS, unitsAt } from './facts-row.ts'

/** Facts of one machine the recommendation puts into use. */
export function factsOfUse(brief: Brief, line: number, { point, option, contaminants }: Use): FactSheet {
  const { equipment, family, label, findings } = option
  const write = new FactWriter(placeId({ line, point, equipment }), brief)
  const its = contaminants.map((c): Finding => findings.find((f) => f.contaminant === c)!)
  const promised = its.filter(({ meets }) => isPromised(meets))
  const partly = its.filter(({ meets }) => meets === 'partly')
  write.computed('use.family', family)
  write.computed('use.label', theMachine({ equipment, label }))
  write.computed('use.promised', promised.length)
  write.computed('use.promisedNames', wordList(promised.map((f) => sizedWords(brief, f.contaminant))))
  write.computed('use.partly', partly.length)
  write.computed('use.partlyPlaces', wordList([...new Set(partly.flatMap(placesMissed))]))
  write.computed(
    'use.shownInProduct',
    brief.quotes.some((quote) => quote.equipment === equipment && quote.obtained === 'in-product'),
  )
  write.computed('use.units', unitsAt(brief, point))
  write.computed('use.testRuns', TEST_RUNS)
  return write.sheet()
}
