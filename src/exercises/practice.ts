import { parseBrief } from '../brief/index.ts'
import { assessCoil } from '../coil/assess-coil.ts'
import type { CoilAssessment } from '../coil/assessment.ts'
import {
  type Brief,
  type CoilMachine,
  type ContaminantInput,
  machineSchema,
  type Point,
  type PointInput,
  type ProductInput,
  type XrayMachine,
} from '../contract/index.ts'
import { archetypes, figuresOf, materials } from '../reference/index.ts'
import { assessXray } from '../xray/assess.ts'
import type { XrayAssessment } from '../xray/assessment.ts'
import { once } from './once.ts'

/** A food, how it passes, and what is put into it: invented, plausible, computed like any brief. */
export interface Practice {
  readonly product: ProductInput
  readonly point: PointInput
  readonly contaminants: readonly ContaminantInput[]
}

const USUAL: PointInput = {
  name: 'practice',
  widthMm: 150,
  lengthMm: 200,
  speedMPerMin: 30,
  packsPerMin: 60,
  hoursPerDay: 16,
  falseRejectsPerPack: 0.001,
}

/** The brief of a practice pack; throws where it is no brief. */
export function briefOf({ product, point, contaminants }: Practice): Brief {
  const parsed = parseBrief({
    product,
    points: [{ ...USUAL, ...point }],
    contaminants: contaminants.map((one) => ({ basis: 'best-achievable' as const, ...one })),
  })
  if (!parsed.ok) throw new Error(`practice pack: ${JSON.stringify(parsed.problems)}`)
  return parsed.brief
}

/** A machine of the reference room. */
export function machineOf(id: string) {
  const archetype = archetypes.get(id)
  if (!archetype) throw new RangeError(`no such archetype: ${id}`)
  return machineSchema.parse(figuresOf(archetype))
}

export interface Seen<A> {
  readonly point: Point
  readonly brief: Brief
  readonly assessment: A
  /** Expected sizes in the order of the contaminants, mm; null where none. */
  readonly expectedMm: readonly (number | null)[]
}

/** What the x-ray physics says of a practice pack with one machine; worked out when first asked for. */
export function withXray(practice: Practice, id = 'xray-single'): () => Seen<XrayAssessment> {
  return once(() => {
    const brief = briefOf(practice)
    const [point] = brief.points
    const assessment = assessXray({
      machine: machineOf(id) as XrayMachine,
      point: point!,
      contaminants: brief.contaminants,
      prefix: 'exercise',
    })
    return { point: point!, brief, assessment, expectedMm: assessment.findings.map((f) => f.expectedMm) }
  })
}

/** The same for a metal detector. */
export function withCoil(practice: Practice, id = 'coil-single'): () => Seen<CoilAssessment> {
  return once(() => {
    const brief = briefOf(practice)
    const [point] = brief.points
    const machine = machineOf(id) as CoilMachine
    const assessment = assessCoil({
      machine,
      point: point!,
      contaminants: brief.contaminants,
      ...(machine.mostAtOnce ? { mostAtOnce: machine.mostAtOnce } : {}),
    })
    return { point: point!, brief, assessment, expectedMm: assessment.findings.map((f) => f.expectedMm) }
  })
}

/** What a material is called. */
export const nameOf = (id: string): string => materials.get(id)?.label ?? id

/** What a machine of the reference room is called. */
export const machineName = (id: string): string => archetypes.get(id)?.label.replace(/ \(.*\)$/, '') ?? id
