import type { Advice } from '../../contract/index.ts'
import type { PlacedOutcome } from '../stages.ts'

/** How to keep out each of these contaminants, as the fired rules of prevention say it. */
export function preventionOf(
  contaminants: readonly number[],
  fired: readonly PlacedOutcome[],
): Omit<Advice['prevention'][number], 'lines'>[] {
  return [...new Set(contaminants)]
    .sort((a, b) => a - b)
    .flatMap((contaminant) => {
      const said = fired.filter((o) => o.type === 'prevents' && o.contaminant === contaminant)
      if (said.length === 0) return []
      return [
        {
          contaminant,
          text: said.map(({ text }) => text).join(' '),
          sources: [...new Set(said.flatMap(({ sources }) => sources))],
          rules: said.map(({ rule }) => rule),
        },
      ]
    })
}
