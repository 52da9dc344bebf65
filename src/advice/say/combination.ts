import type { Advice } from '../../contract/index.ts'
import type { Combined, Ordered } from '../stages.ts'
import { independenceWords } from './independence.ts'
import { stillEnters } from './still-enters.ts'

function becauseOf({ kind, uses }: Combined): string {
  switch (kind) {
    case 'nothing-asked':
      return 'No contaminant has a size to find, so nothing can be met or missed.'
    case 'nothing-met':
      return 'No machine compared here meets any size to find at the value that can be promised.'
    case 'too-many':
      return 'More than 3 machines would be needed; look at the line itself first.'
    case 'met':
      return uses.length === 1
        ? 'One machine meets every size that any machine here meets, at the value that can be promised.'
        : `${uses.length} machines together meet every size that any machine here meets; no smaller set does.`
  }
}

/** The smallest set in words, with what may be multiplied and what can still enter. */
export function combinationWords({
  brief,
  combination,
}: Pick<Ordered, 'brief' | 'combination'>): Advice['combination'] {
  const { uses, unmet, seenTwice } = combination
  return {
    uses: uses.map(({ point, option, contaminants }) => ({
      point: brief.points[point]!.name,
      equipment: option.equipment,
      contaminants: [...contaminants],
    })),
    unmet: [...unmet],
    because: becauseOf(combination),
    independence: independenceWords(brief, uses, seenTwice),
    stillEnters: stillEnters(brief),
  }
}
