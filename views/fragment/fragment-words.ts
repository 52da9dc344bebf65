import type { FragmentOption } from '../../src/contract/fragment.ts'
import { chanceWords } from '../words/size.ts'

/** The chance of one machine in words; why there is none. */
export function optionChance({ excluded, chance, meets }: FragmentOption): string {
  if (excluded !== '') return 'cannot take this pack'
  if (chance === null) return 'no chance is computed'
  if (meets === 'cannot') return 'not found'
  return chanceWords(chance)
}

/** From all misses alike to all independent: "92 % to 98 %". */
export function togetherChance({ atLeast, atMost }: { atLeast: number; atMost: number }): string {
  const [low, high] = [chanceWords(atLeast), chanceWords(atMost)]
  return low === high ? low : `${low} to ${high}`
}

/** Share of such pieces that a machine upstream removes. */
export const shareWords = ([low, high]: readonly [number, number]): string =>
  `${Math.round(low * 100)} to ${Math.round(high * 100)} %`
