import type { Brief, Contaminant, Finding } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { placeId } from '../facts/place-id.ts'
import { mm } from '../say/words.ts'
import { oftenWords, type Unit } from './fragment-words.ts'

/** A machine at a point, with its chance of finding the piece. */
export interface Chance {
  readonly label: string
  readonly point: string
  readonly chance: number
}

export interface FoundPiece {
  /** The piece in words, with its size. */
  readonly words: string
  readonly piece: Contaminant
  readonly unit: Unit
  /** Every machine with a computed chance that can take the pack. */
  readonly able: readonly Chance[]
  /** All machines of the line in a row; null with fewer than two. */
  readonly together: { readonly atLeast: number; readonly atMost: number } | null
}

/** Facts of a piece that was found and of the line it came from. */
export function factsOfFound(brief: Brief, { words, piece, unit, able, together }: FoundPiece): FactSheet {
  const write = new FactWriter('found', brief)
  write.computed('found.piece', words)
  write.computed('found.material', materials.get(piece.material)?.label ?? piece.material)
  write.computed('found.kindKnown', !piece.material.endsWith('_any'))
  write.computed('found.machinesNamed', brief.equipment.length > 0)
  write.computed('found.inPacks', unit === 'packs')
  write.computed('found.anyChance', able.length > 0)
  if (able.length > 0) {
    const best = able.reduce((a, b) => (b.chance > a.chance ? b : a))
    write.computed('found.best', `${best.label} at “${best.point}”`)
    write.computed('found.bestOften', oftenWords(best.chance, unit))
  }
  write.computed('found.several', together !== null)
  if (together) {
    write.computed('found.atLeast', oftenWords(together.atLeast, unit))
    write.computed('found.atMost', oftenWords(together.atMost, unit))
  }
  return write.sheet()
}

/** Facts of one machine that such a piece passed. */
export function factsOfFinder(
  brief: Brief,
  place: { readonly point: number; readonly equipment: string },
  { bestMm, expectedMm, cautiousMm, widest }: Finding,
  sizeMm: number,
): FactSheet {
  const write = new FactWriter(placeId(place), brief)
  const sized = bestMm !== null && expectedMm !== null
  write.computed('finder.sized', sized)
  write.computed('finder.size', mm(sizeMm))
  write.computed('finder.hasPromise', cautiousMm !== null)
  write.computed('finder.belowBest', bestMm !== null && sizeMm < bestMm)
  write.computed('finder.hasWidest', widest !== '')
  if (expectedMm !== null) write.computed('finder.expected', mm(expectedMm))
  if (cautiousMm !== null) write.computed('finder.promise', mm(cautiousMm))
  if (bestMm !== null) write.computed('finder.best', mm(bestMm))
  if (widest !== '') write.computed('finder.widest', widest)
  return write.sheet()
}
