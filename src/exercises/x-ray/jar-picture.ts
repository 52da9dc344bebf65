import type { Zone } from '../../contract/index.ts'
import type { Picture } from '../exercise.ts'
import { mm } from '../numbers.ts'

/** A standing jar with its places as a beam from the side sees it; what is found where only with the answer. */
export function jarPicture(title: string, zones: readonly Zone[], answered: boolean): Picture {
  return {
    kind: 'places',
    title,
    container: 'jar',
    fromAbove: false,
    places: zones.map(({ name, state, sizes }) => ({
      name,
      choice: name.replace(/\s/g, '-'),
      state: answered ? state : 'findable',
      words: answered ? (sizes.expectedMm === null ? 'nothing' : mm(sizes.expectedMm)) : '',
    })),
  }
}
