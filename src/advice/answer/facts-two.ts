import type { Brief } from '../../contract/index.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { placeId } from '../facts/place-id.ts'
import { mm, nameWords, wordList } from '../say/words.ts'
import type { Close, Standing } from '../stages.ts'
import { TEST_RUNS } from './facts-row.ts'

/** A machine at a point. */
export interface Placed {
  readonly point: number
  readonly option: Pick<Standing, 'equipment' | 'family' | 'label'>
}

/** Place of a machine, "p0.coil-single". */
export const placedAt = ({ point, option }: Placed): string => placeId({ point, equipment: option.equipment })

/** Facts of two machines that can find the same piece. */
export function factsOfTogether(brief: Brief, a: Placed, b: Placed): FactSheet {
  const write = new FactWriter(`${placedAt(b)}.with.${placedAt(a)}`, brief)
  write.computed('together.first', a.option.label)
  write.computed('together.second', b.option.label)
  write.computed('together.samePrinciple', a.option.family === b.option.family)
  write.computed('together.samePoint', a.point === b.point)
  return write.sheet()
}

/** Facts of two options of a point between which the order is close. */
export function factsOfClose(brief: Brief, point: number, close: Close): FactSheet {
  const { first, second, contaminants, turned } = close
  const write = new FactWriter(
    `${placedAt({ point, option: second })}.with.${placedAt({ point, option: first })}`,
    brief,
  )
  write.computed('close.first', first.label)
  write.computed('close.second', second.label)
  write.computed('close.pieces', pieceList(brief, contaminants))
  write.computed('close.turned', turned)
  write.computed('close.testRuns', TEST_RUNS)
  return write.sheet()
}

/** The pieces of a test, each with its size; those without a size to find are left out. */
function pieceList(brief: Brief, contaminants: readonly number[]): string {
  return wordList(
    contaminants.flatMap((c) => {
      const size = brief.contaminants[c]!.mustFindMm
      return size === null ? [] : [`${nameWords(brief, c)} of ${mm(size)}`]
    }),
  )
}
