import type { Laid } from './laid.ts'
import type { Side } from './sides.ts'

export const MOST_SIDES = 3
/** Of two packs: machines, each of which stands there twice. */
export const MOST_MACHINES_TWICE = 2

/** The sides an address asks for, in its order, each once; words that name none are passed over. */
const asked = (sides: readonly Side[], keys: readonly string[]): Side[] =>
  [...new Set(keys)].flatMap((key) => sides.find((side) => side.key === key) ?? [])

/**
 * The machines of one brief laid side by side, at most three: those asked for; else those for which something is
 * claimed; else the two first of the last point that ranks two. One alone gets the best ranked of its point beside it.
 */
export function pickSides(sides: readonly Side[], keys: readonly string[]): Side[] {
  const wanted = asked(sides, keys)
  if (wanted.length >= 2) return wanted.slice(0, MOST_SIDES)
  const claimed = onePerMachine(sides.filter(({ claims }) => claims.length > 0))
  if (wanted.length === 0 && claimed.length >= 2) return claimed.slice(0, MOST_SIDES)
  const ranked = sides.filter(({ option }) => option.rank !== null)
  const atPoint = (pointIndex: number) => ranked.filter((side) => side.pointIndex === pointIndex)
  const first = wanted[0] ?? claimed[0]
  if (first) {
    const other =
      atPoint(first.pointIndex).find(({ key }) => key !== first.key) ??
      ranked.find(({ key }) => key !== first.key)
    return other ? [first, other] : [first]
  }
  const last = ranked.findLast(({ pointIndex }) => atPoint(pointIndex).length >= 2)
  return last ? atPoint(last.pointIndex).slice(0, 2) : ranked.slice(0, 2)
}

/** A machine for which something is claimed stands at the last point that has it, where the claim is judged. */
function onePerMachine(sides: readonly Side[]): Side[] {
  const last = new Map(sides.map((side) => [side.option.equipment, side]))
  return sides.filter((side) => last.get(side.option.equipment) === side)
}

/** What the advice puts on the line last; where it puts nothing, what the last point ranks first. */
export function recommended({ advice }: Laid, sides: readonly Side[]): Side | undefined {
  const use = advice.combination.uses.at(-1)
  const used = sides.find(
    ({ point, option }) => point.name === use?.point && option.equipment === use?.equipment,
  )
  return used ?? sides.findLast(({ option }) => option.rank === 1) ?? sides[0]
}

/** The same machine with the other pack: at the point of the same number where it stands there, else the last one. */
const twinOf = (side: Side, others: readonly Side[]): Side | undefined => {
  const same = others.filter(({ option }) => option.equipment === side.option.equipment)
  return same.find(({ pointIndex }) => pointIndex === side.pointIndex) ?? same.at(-1)
}

/** What the advice puts there with either pack; where that is the same machine, the best of the other technology beside it: a film or a tray is often its question alone. */
function usualTwice(laid: readonly [Laid, Laid], ofFirst: readonly Side[], ofSecond: readonly Side[]) {
  const [first, second] = [recommended(laid[0], ofFirst), recommended(laid[1], ofSecond)]
  const isSame = first?.option.equipment === second?.option.equipment
  const other = ofFirst.find(
    ({ pointIndex, option }) => pointIndex === first?.pointIndex && option.family !== first.option.family,
  )
  return isSame ? [first, other] : [first, second]
}

/** Machines of two packs, each with the one and with the other: those asked for, else those with quoted sizes, else the usual ones. */
export function pickTwice(
  laid: readonly [Laid, Laid],
  sides: readonly Side[],
  keys: readonly string[],
): Side[] {
  const [ofFirst, ofSecond] = laid.map((one) => sides.filter((side) => side.laid === one)) as [Side[], Side[]]
  const wanted = asked(sides, keys)
  const claimed = onePerMachine(ofFirst.filter(({ claims }) => claims.length > 0))
  const usual = claimed.length > 0 ? claimed : usualTwice(laid, ofFirst, ofSecond)
  const pairs = (wanted.length > 0 ? wanted : usual).flatMap(
    (side): (readonly [Side | undefined, Side | undefined])[] => {
      if (!side) return []
      return side.laid === laid[0] ? [[side, twinOf(side, ofSecond)]] : [[twinOf(side, ofFirst), side]]
    },
  )
  const once = new Map(pairs.map((pair) => [pair.map((side) => side?.key).join(' '), pair]))
  return [...once.values()]
    .slice(0, MOST_MACHINES_TWICE)
    .flatMap((pair) => pair.filter((side) => side !== undefined))
}
