import { standsAt } from '../../brief/standing.ts'
import { type Brief, type Machine, machineSchema, type Stage } from '../../contract/index.ts'
import { archetypes } from '../../reference/index.ts'

/** A machine at a point, with what is known of it beside its figures. */
export interface LinedUp {
  readonly machine: Machine
  readonly ranked: boolean
  readonly burden: number
}

/** Burden of a machine that says none (judgement: the middle). */
const USUAL_BURDEN = 3

function fromArchetype(id: string): LinedUp {
  const archetype = archetypes.get(id)
  if (!archetype) throw new RangeError(`no such archetype: ${id}`)
  const { stages: _stages, ranked, basis: _basis, sources: _sources, mark: _mark, ...figures } = archetype
  const machine = machineSchema.parse(figures)
  return { machine, ranked, burden: machine.burden ?? USUAL_BURDEN }
}

/**
 * Machines compared at a stage: those the brief names that can stand there, or, where it names none, every
 * archetype meant for that stage.
 */
export function lineUp(brief: Brief, stage: Stage): LinedUp[] {
  if (brief.equipment.length === 0) {
    return [...archetypes.values()].filter((a) => a.stages.includes(stage)).map((a) => fromArchetype(a.id))
  }
  return brief.equipment.flatMap((entry) => {
    if (typeof entry === 'string')
      return archetypes.get(entry)?.stages.includes(stage) ? [fromArchetype(entry)] : []
    return standsAt(entry, stage)
      ? [{ machine: entry, ranked: true, burden: entry.burden ?? USUAL_BURDEN }]
      : []
  })
}
