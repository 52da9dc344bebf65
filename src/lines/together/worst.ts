import type { LineAnswer, Worst } from '../../contract/index.ts'

type Piece = Pick<LineAnswer, 'material' | 'shape' | 'lengthMm' | 'faceMm2' | 'placement'>

/** One product's standing with a contaminant. */
export interface Held extends Piece, Pick<Worst, 'row' | 'title' | 'askedMm' | 'promisedMm' | 'expectedMm'> {
  readonly equipment: string | null
  readonly meets: LineAnswer['meets']
}

/** Contaminants told apart on one line. */
const MOST_PIECES = 200

export const isMet = (meets: LineAnswer['meets']): boolean => meets === 'yes' || meets === 'partly'

const keyOf = ({ material, shape, lengthMm, faceMm2, placement }: Piece) =>
  `${material}|${shape}|${lengthMm}|${faceMm2}|${placement}`

/** A size that cannot be promised is worse than any; between two such, the one that is expected larger, or not at all. */
const badness = ({ promisedMm, expectedMm }: Pick<Held, 'promisedMm' | 'expectedMm'>) =>
  promisedMm ?? 1000 + (expectedMm ?? 1000)

/** The worst product of each contaminant, kept as products pass: its size does not grow with them. */
export class WorstProducts {
  readonly #worst = new Map<string, Worst>()

  note({ meets, ...held }: Held): void {
    const key = keyOf(held)
    const known = this.#worst.get(key)
    if (!known && this.#worst.size >= MOST_PIECES) return
    const asks = held.askedMm !== null
    const met = (known?.met ?? 0) + (asks && isMet(meets) ? 1 : 0)
    const asked = (known?.asked ?? 0) + (asks ? 1 : 0)
    const worse = !known || badness(held) > badness(known)
    this.#worst.set(key, { ...(worse ? held : known), met, asked })
  }

  /** In the order in which the contaminants were first seen. */
  get all(): Worst[] {
    return [...this.#worst.values()]
  }
}
