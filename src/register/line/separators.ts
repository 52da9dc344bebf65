import type { Advice, Brief } from '../../contract/index.ts'
import type { Answers } from './answers.ts'

/** Shares removed at sizes, worst and best; null where the device has no use for that contaminant there. */
export type RemovedBySize = (
  pointIndex: number,
  equipment: string,
  contaminant: number,
  sizesMm: readonly number[],
) => (readonly [number, number])[] | null

/** A sieve, magnet, sorter or separator that stands at a point ahead of its detector. */
export interface Separator {
  readonly pointIndex: number
  readonly point: string
  readonly equipment: string
  readonly label: string
}

export const NO_SEPARATORS = 'none'

/**
 * The devices ahead of the detector at a point: those a person names, else those the brief lists among the machines
 * of the plant and no rule speaks against. A device that is only compared stands nowhere.
 */
export function separatorsAt(
  brief: Brief,
  advice: Pick<Advice, 'points'>,
  pointIndex: number,
  answers: Answers,
): Separator[] {
  const there = advice.points[pointIndex]
  if (!there) return []
  const offered = [...new Map(there.removals.map((one) => [one.equipment, one])).values()]
  const listed = brief.equipment.length === 0 ? [] : offered.filter(({ unsuitable }) => unsuitable === '')
  const filled = listed.map(({ equipment }) => equipment).join(', ') || NO_SEPARATORS
  const names = answers.list(
    `p${pointIndex}.separators`,
    filled,
    offered.map(({ equipment }) => equipment),
    NO_SEPARATORS,
  )
  return offered
    .filter(({ equipment }) => names.includes(equipment))
    .map(({ equipment, label }) => ({ pointIndex, point: there.name, equipment, label }))
}
