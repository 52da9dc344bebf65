import type { Brief } from '../contract/index.ts'
import {
  type BeforeCard,
  beforeCard,
  boundCard,
  type Card,
  type CardOptions,
  cardFileNames,
  cardMachines,
  cardOf,
  rowSizes,
} from './card.ts'

/** Works out its part of a card somewhere else, at the same time. */
export interface OtherHand {
  readonly before: (brief: Brief, options: CardOptions) => Promise<BeforeCard[]>
  readonly card: (brief: Brief, options: CardOptions) => Promise<Card>
}

/**
 * A card of two machines or more, worked out by two hands: the same card as {@link cardOf} gives. What is expected of the
 * machines is known before the sizes of its pieces are, so that the hands meet twice.
 */
export async function sharedCard(brief: Brief, options: CardOptions, other: OtherHand): Promise<Card> {
  const ids = cardMachines(brief, options)
  const apart = ids.every((id) => cardFileNames([id])[0] === cardFileNames(ids)[ids.indexOf(id)])
  if (ids.length < 2 || !apart) return cardOf(brief, options)
  const of = (equipment: readonly string[]): CardOptions => ({ ...options, equipment })
  const there = ids.filter((_, i) => i % 2 === 1)
  const elsewhere = heard(other.before(brief, of(there)))
  const here = beforeCard(brief, of(ids.filter((id) => !there.includes(id))))
  const before = inOrder(ids, [...here, ...(await elsewhere)])
  boundCard(before)
  const sizesMm = rowSizes(brief, options, before)
  const [mine, theirs] = halves(before)
  if (theirs.length === 0) return cardOf(brief, { ...of(ids), sizesMm })
  const part = heard(other.card(brief, { ...of(theirs), sizesMm }))
  const own = cardOf(brief, { ...of(mine), sizesMm })
  const rest = await part
  return {
    ...own,
    machines: inOrder(ids, [...own.machines, ...rest.machines]),
    notes: [...new Set([...own.notes, ...rest.notes])],
  }
}

/** Where this hand fails first, nobody asks for the other's part any more; that it failed too must not end the program. */
function heard<Part>(part: Promise<Part>): Promise<Part> {
  part.catch(() => {})
  return part
}

const inOrder = <One extends { readonly equipment: string }>(ids: readonly string[], all: readonly One[]) =>
  ids.map((id) => all.find(({ equipment }) => equipment === id)!)

/** A machine takes so many pixels' worth of work beside its pixels (measured: finer ones take less each). */
const WORK_BESIDE_PIXELS = 60_000

/** The machines in two parts of nearly the same work; those that are left out of the card take none. */
function halves(before: readonly BeforeCard[]): [string[], string[]] {
  const parts: [string[], string[]] = [[], []]
  const work = [0, 0]
  for (const { equipment, pixels } of [...before].sort((a, b) => (b.pixels ?? 0) - (a.pixels ?? 0))) {
    const to = pixels === null || work[0]! <= work[1]! ? 0 : 1
    parts[to].push(equipment)
    work[to]! += pixels === null ? 0 : pixels + WORK_BESIDE_PIXELS
  }
  return parts
}
