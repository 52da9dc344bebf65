import type { Machine, Stage } from '../contract/index.ts'
import { archetypes } from '../reference/index.ts'

/** Where a machine described in the brief can stand: a coil by its arrangement, removal and x-ray anywhere it fits. */
export function standsAt(machine: Machine, stage: Stage): boolean {
  if (machine.family !== 'coil') return true
  const arrangement = machine.arrangement ?? 'tunnel'
  if (arrangement === 'free-fall') return stage === 'free-fall'
  if (arrangement === 'pipe') return stage === 'pumped'
  return stage === 'loose' || stage === 'packed'
}

/** How many machines are compared at a stage, detectors and removers, where the brief names these (or none). */
export function countAt(equipment: readonly (string | Machine)[], stage: Stage): number {
  const listed = [...archetypes.values()].filter(({ stages }) => stages.includes(stage))
  if (equipment.length === 0) return listed.length
  return equipment.filter((one) =>
    typeof one === 'string' ? listed.some(({ id }) => id === one) : standsAt(one, stage),
  ).length
}
