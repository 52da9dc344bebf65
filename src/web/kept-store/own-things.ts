import type { BriefInput, ContaminantInput } from '../../contract/index.ts'
import type { Body } from './bodies.ts'

/** What a person entered of their own: machines as quoted, materials as described. */
export function ownOf({ equipment = [], contaminants }: BriefInput): Body<'own'> {
  return {
    equipment: equipment.filter((one) => typeof one !== 'string'),
    contaminants: contaminants.filter(({ material }) => material === 'custom'),
  }
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)
const isOwnAs = (one: ContaminantInput) => (other: ContaminantInput) =>
  other.material === 'custom' && other.ownName === one.ownName && other.elements === one.elements

/** A brief with machines and materials of one's own added; what is in it already comes in no second time. */
export function withOwn(brief: BriefInput, own: Body<'own'>): BriefInput {
  const equipment = [...(brief.equipment ?? [])]
  for (const machine of own.equipment) {
    if (equipment.some((one) => typeof one !== 'string' && same({ ...one, id: '' }, { ...machine, id: '' })))
      continue
    const taken = new Set(equipment.map((one) => (typeof one === 'string' ? one : one.id)))
    let id = machine.id
    for (let next = 2; taken.has(id); next++) id = `${machine.id}-${next}`
    equipment.push({ ...machine, id })
  }
  const contaminants = [...brief.contaminants]
  for (const one of own.contaminants) if (!contaminants.some(isOwnAs(one))) contaminants.push(one)
  return { ...brief, ...(equipment.length > 0 ? { equipment } : {}), contaminants }
}
