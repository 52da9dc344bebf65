import type { Brief, Option } from '../../contract/index.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { nameWords, sizedWords, wordList } from '../say/words.ts'
import type { Apart, PartingOfTwo, Worst } from '../stages.ts'
import { placedAt } from './facts-two.ts'

/** One of two options: what it is called, what it asks of its owner, and the ground of its verdict in words. */
export type Side = Pick<Option, 'equipment' | 'label' | 'family' | 'rank' | 'burden' | 'because'>

/** Facts of the option recommended at a point beside another one. */
export function factsOfApart(
  brief: Brief,
  point: number,
  { parting }: Pick<Apart, 'parting'>,
  sides: readonly [Side, Side],
): FactSheet {
  const [first, second] = sides
  const write = new FactWriter(
    `${placedAt({ point, option: second })}.with.${placedAt({ point, option: first })}`,
    brief,
  )
  write.computed('apart.by', partedBy(parting))
  const ideal = sides.find(({ rank }) => rank === null)
  write.computed('apart.hasIdeal', ideal !== undefined)
  if (ideal) write.computed('apart.ideal', ideal.label)
  if (!parting) return write.sheet()
  const [a, b] = parting.sign > 0 ? ([1, 0] as const) : ([0, 1] as const)
  for (const [who, at] of [
    ['ahead', a],
    ['behind', b],
  ] as const) {
    const { label, because, burden } = sides[at]
    write.computed(`apart.${who}`, label)
    write.computed(`apart.${who}Because`, because.replace(/\.$/, ''))
    write.computed(`apart.${who}Burden`, burden)
    write.computed(`apart.${who}Leaves`, leaves(brief, parting.unmet[at]))
    write.computed(`apart.${who}Worst`, worst(brief, parting.worst[at]))
  }
  if (parting.severity !== null) write.computed('apart.severity', parting.severity)
  const sized = (those: readonly number[]) => wordList(those.map((c) => sizedWords(brief, c)))
  write.computed('apart.aheadShown', parting.shown[a].length > 0)
  write.computed('apart.aheadShownNames', sized(parting.shown[a]))
  write.computed('apart.behindTried', parting.tried[b].length > 0)
  write.computed('apart.behindTriedNames', sized(parting.tried[b]))
  return write.sheet()
}

/** The step, where a verdict that follows from the sizes left unmet is told by these. */
function partedBy(parting: PartingOfTwo | null) {
  if (!parting) return 'undecided'
  return parting.step === 'verdict' && parting.severity !== null ? 'unmet' : parting.step
}

const leaves = (brief: Brief, unmet: readonly number[]) =>
  unmet.length === 0 ? 'none' : wordList(unmet.map((c) => nameWords(brief, c)))

/** The worst size an option can promise, and whose size it is. */
function worst(brief: Brief, { ratio, contaminant }: Worst): string {
  const whose = contaminant === null ? '' : ` (${nameWords(brief, contaminant)})`
  return ratio === Number.POSITIVE_INFINITY
    ? `no size at all${whose}`
    : `${Number(ratio.toPrecision(2))} times the size to find${whose}`
}
