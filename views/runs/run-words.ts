import type { CleanRun, RunGroup } from '../../src/contract/runs.ts'
import { type Names, pieceWords } from '../words/contaminant.ts'

const counts = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })
const perThousand = (rate: number) => Number((rate * 1000).toPrecision(2))

/** "X-07 at 12: quartz, sphere, heap end". */
export function groupTitle(group: RunGroup, names: Names = new Map()): string {
  const at = group.setting ? ` at setting ${group.setting}` : ''
  const place = group.position ? `, ${group.position}` : ''
  return `${group.equipment}${at}: ${pieceWords(group, names)}${place}`
}

/** "0.33 in 1,000; 95 % sure it is at most 1 in 1,000". */
export function rateWords({ rate, high }: CleanRun): string {
  return `${perThousand(rate)} in 1,000; 95 % sure at most ${perThousand(high)} in 1,000`
}

export const countWords = (count: number): string => counts.format(count)
