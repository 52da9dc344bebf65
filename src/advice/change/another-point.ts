import { entersBehind } from '../../brief/entry.ts'
import type { Brief, Option } from '../../contract/index.ts'
import { isPromised } from '../assess/meets.ts'
import { nameWords, wordList } from '../say/words.ts'
import type { FoundChange } from './found-change.ts'

type Points = readonly { readonly name: string; readonly options: readonly Option[] }[]

/** Contaminants that a machine misses at one point and meets at another where they are in the food already. */
function gained(brief: Brief, here: Option, there: Option, at: number): number[] {
  return here.findings.flatMap(({ contaminant, meets, mustFindMm }) => {
    const other = there.findings.find((f) => f.contaminant === contaminant)
    const gains = mustFindMm !== null && !isPromised(meets) && other !== undefined && isPromised(other.meets)
    return gains && entersBehind(brief, contaminant, at) !== true ? [contaminant] : []
  })
}

/**
 * The same machine at another inspection point of the brief, where that brings a missed size within reach.
 * Nothing is computed anew: the advice has both points.
 */
export function changesOfPoint(brief: Brief, points: Points, option: Option, from: number): FoundChange[] {
  return points.flatMap(({ name, options }, to): FoundChange[] => {
    const there = options.find((o) => o.equipment === option.equipment)
    if (to === from || !there || there.verdict === 'not-suitable') return []
    const pieces = gained(brief, option, there, to)
    if (pieces.length === 0) return []
    return [
      {
        inputs: [{ path: `points.${from}`, from: points[from]!.name, to: name }],
        point: from,
        option: there,
        contaminant: null,
        beside: `points.${to}`,
        values: {
          'change.kind': 'point',
          'change.machine': option.label,
          'change.met': wordList(pieces.map((c) => nameWords(brief, c))),
          'change.earlier': to < from,
        },
      },
    ]
  })
}
