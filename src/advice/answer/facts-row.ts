import type { Brief } from '../../contract/index.ts'
import { runsToDemonstrate } from '../../numerics/binomial.ts'
import { materials } from '../../reference/index.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { packKind } from '../facts/kinds/pack-kind.ts'
import { placeId } from '../facts/place-id.ts'
import { belongsInTheFood } from '../order/belongs.ts'
import { sizeRatio } from '../order/order.ts'
import { theMachine } from '../say/machine-words.ts'
import { achievedWords, packSize, sizedWords, wordList } from '../say/words.ts'
import type { Ordered, Row } from '../stages.ts'
import { takenOut } from './taken-out.ts'

/** What a test on the product is to show: the chance a size stands for, at the usual confidence. */
const SHOWN = { chance: 0.9, confidence: 0.95 } as const

/** Fresh packs, none missed, that show what a size stands for. */
export const TEST_RUNS = runsToDemonstrate(SHOWN, 0)

/** What is tested at a point: packs, or portions of what flows by. */
export const unitsAt = (brief: Brief, point: number) =>
  brief.points[point]!.stage === 'packed' ? 'packs' : 'portions'

/** Facts of one contaminant on one line. */
export function factsOfRow(ordered: Ordered, line: number, row: Row): FactSheet {
  const { brief, lines } = ordered
  const { contaminant, option, point, finding, by, metTooEarlyAt } = row
  const write = new FactWriter(placeId({ line, contaminant }), brief)
  write.computed('row.by', by)
  write.computed('row.meets', row.meets)
  write.computed('row.asked', brief.contaminants[contaminant]!.mustFindMm !== null)
  write.computed('row.piece', sizedWords(brief, contaminant))
  write.computed('row.metTooEarly', metTooEarlyAt !== null)
  if (metTooEarlyAt !== null) write.computed('row.earlyPoint', brief.points[metTooEarlyAt]!.name)
  write.computed('row.wouldMeet', row.wouldMeet)
  write.computed('row.testRuns', TEST_RUNS)
  write.computed('row.belongs', belongsInTheFood(brief, lines[line]!, row))
  const taken = takenOut(ordered, lines[line]!.points, contaminant)
  if (taken) {
    write.computed('row.removedBy', taken.label)
    write.computed('row.removedLeastPct', taken.leastPct)
    write.computed('row.removedMostPct', taken.mostPct)
  }
  if (!option || !finding || point === null) return write.sheet()
  write.computed('row.machine', theMachine(option))
  write.computed('row.point', brief.points[point]!.name)
  write.computed('row.packKind', packKind(brief.points[point]!, materials))
  write.computed('row.achievable', achievedWords(finding))
  write.computed('row.units', unitsAt(brief, point))
  const times = sizeRatio(finding)
  if (times !== null && Number.isFinite(times)) write.computed('row.timesAsked', times)
  write.computed('row.timesOwnPiece', timesOwnPiece(brief, point, finding.expectedMm))
  write.computed('row.places', wordList(row.places))
  write.computed('row.buildSize', packSize(brief.points[point]!))
  return write.sheet()
}

/** Size expected over the size of the food's own pieces; 0 where it has none, or nothing is found. */
function timesOwnPiece(brief: Brief, point: number, expectedMm: number | null): number {
  const { structure, grainMm } = brief.points[point]!.product
  return structure === 'granular' && expectedMm !== null ? expectedMm / grainMm : 0
}
