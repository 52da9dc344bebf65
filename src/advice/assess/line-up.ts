import { standsAt } from '../../brief/standing.ts'
import type { Brief, Machine, Point } from '../../contract/index.ts'
import { archetypes } from '../../reference/index.ts'
import { machineAt } from './build-choice.ts'

/** A machine at a point, with what is known of it beside its figures. */
export interface LinedUp {
  readonly machine: Machine
  readonly ranked: boolean
  readonly burden: number
}

/** Burden of a machine that says none (judgement: the middle). */
const USUAL_BURDEN = 3

function fromArchetype(id: string, point: Point): LinedUp {
  const archetype = archetypes.get(id)
  if (!archetype) throw new RangeError(`no such archetype: ${id}`)
  const machine = machineAt(archetype, point)
  return { machine, ranked: archetype.ranked, burden: machine.burden ?? USUAL_BURDEN }
}

/**
 * Machines compared at a point: those the brief names that can stand there, or, where it names none, every
 * archetype meant for its stage, in the smallest build that takes the pack.
 */
export function lineUp(brief: Brief, point: Point): LinedUp[] {
  const { stage } = point
  if (brief.equipment.length === 0) {
    return [...archetypes.values()]
      .filter((a) => a.stages.includes(stage))
      .map((a) => fromArchetype(a.id, point))
  }
  return brief.equipment.flatMap((entry) => {
    if (typeof entry === 'string')
      return archetypes.get(entry)?.stages.includes(stage) ? [fromArchetype(entry, point)] : []
    return standsAt(entry, stage)
      ? [{ machine: entry, ranked: true, burden: entry.burden ?? USUAL_BURDEN }]
      : []
  })
}
