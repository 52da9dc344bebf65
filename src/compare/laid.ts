import type { Advice, Brief, Contaminant } from '../contract/index.ts'

/** One brief with its advice. `mark` tells two packs apart ("A", "B"); empty where there is only one. */
export interface Laid {
  readonly mark: string
  readonly brief: Brief
  readonly advice: Advice
}

/** A piece that at least one of the briefs looks for, and its number in each of them (null: not looked for). */
export interface Wanted {
  readonly piece: Contaminant
  readonly at: readonly (number | null)[]
}

/** What makes two contaminants the same piece; the size asked of it may differ. */
const keyOf = ({ material, shape, lengthMm, faceMm2, placement }: Contaminant) =>
  JSON.stringify([material, shape, lengthMm, faceMm2, placement])

/** Pieces of all briefs in the order they are met; the same piece stands once, twice where one brief names it twice. */
export function wantedIn(laid: readonly Laid[]): Wanted[] {
  const found = new Map<string, { piece: Contaminant; at: (number | null)[] }>()
  laid.forEach(({ brief }, which) => {
    const times = new Map<string, number>()
    brief.contaminants.forEach((piece, index) => {
      const key = keyOf(piece)
      const turn = times.get(key) ?? 0
      times.set(key, turn + 1)
      const name = `${key} ${turn}`
      const wanted = found.get(name) ?? { piece, at: laid.map(() => null) }
      wanted.at[which] = index
      found.set(name, wanted)
    })
  })
  return [...found.values()]
}
