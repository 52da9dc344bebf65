import { z } from 'zod'
import { pieceShort } from '../../../views/words/contaminant.ts'
import {
  type BriefInput,
  briefSchema,
  contaminantSchema,
  lineAnswerSchema,
  lineMachineSchema,
  machineSchema,
  versionsSchema,
} from '../../contract/index.ts'
import type { Kind, Revision } from '../../store/kept.ts'
import { materialNames } from '../shown/choices.ts'

const adviceSchema = z.object({
  sentence: z.string(),
  brief: briefSchema,
  answers: z.array(lineAnswerSchema),
  machines: z.array(lineMachineSchema),
})

/** What a worker answers of a brief, to be kept. */
export const inShortSchema = adviceSchema.extend({ title: z.string(), versions: versionsSchema })

const typedSchema = z.object({
  table: z.string(),
  machine: z.string(),
  clauseSize: z.string(),
  clausePieces: z.string(),
  clauseMisses: z.string(),
  clauseClean: z.string(),
  clauseRejects: z.string(),
})
const runsSchema = z.object({ brief: briefSchema.nullable(), typed: typedSchema })

/** Machines as quoted and materials as described, without the brief they were entered for. */
const ownSchema = z.object({ equipment: z.array(machineSchema), contaminants: z.array(contaminantSchema) })

export const BODIES = { brief: briefSchema, advice: adviceSchema, runs: runsSchema, own: ownSchema } as const
export type Body<Of extends Kind> = z.infer<(typeof BODIES)[Of]>

/** A body as what it was kept as; null where it is something else. */
export function bodyOf<Of extends Kind>(kind: Of, body: unknown): Body<Of> | null {
  const read = BODIES[kind].safeParse(body)
  return read.success ? (read.data as Body<Of>) : null
}

/** A body with names in place of numbers of a list, so that what differs between two is told by what it is. */
export function named(kind: Kind, { body, versions }: Pick<Revision, 'body' | 'versions'>): unknown {
  const advice = kind === 'advice' ? bodyOf('advice', body) : null
  if (advice) {
    const { sentence, answers, machines, brief } = advice
    return {
      headline: sentence,
      ...byName(
        answers.map((one) => [
          `${pieceShort(one, materialNames)}${one.line ? ` (${one.line})` : ''}`,
          sizesOf(one),
        ]),
      ),
      ...byName(
        machines.map(({ point, label, verdict, build, settings }) => [
          `${label} (${point})`,
          { verdict, build, settings },
        ]),
      ),
      brief: namedBrief(brief),
      versions,
    }
  }
  const runs = kind === 'runs' ? bodyOf('runs', body) : null
  if (runs) {
    const { table, ...clause } = runs.typed
    return {
      ...byName(table.split(/\r?\n/).map((line, at) => [`line ${at + 1}`, line])),
      ...clause,
      brief: runs.brief && namedBrief(runs.brief),
    }
  }
  const own = kind === 'own' ? bodyOf('own', body) : null
  if (own)
    return byName([
      ...own.equipment.map((one) => [one.label ?? one.id, one] as const),
      ...own.contaminants.map((one) => [one.ownName ?? one.material, one] as const),
    ])
  const brief = bodyOf('brief', body)
  return brief ? namedBrief(brief) : body
}

const namedBrief = ({ contaminants, ...brief }: BriefInput) => ({
  ...brief,
  contaminants: byName(
    contaminants.map((one) => {
      const { ownName, material, shape = 'sphere', placement = 'inside' } = one
      const { lengthMm = null, faceMm2 = null } = one
      return [
        pieceShort({ material: ownName ?? material, shape, placement, lengthMm, faceMm2 }, materialNames),
        one,
      ]
    }),
  ),
})

const sizesOf = ({ askedMm, promisedMm, expectedMm, meets, left }: Body<'advice'>['answers'][number]) => ({
  askedMm,
  promisedMm,
  expectedMm,
  meets,
  left: left.text,
})

/** Two of the same name are told apart by their number. */
function byName(all: readonly (readonly [string, unknown])[]): Record<string, unknown> {
  const named: Record<string, unknown> = {}
  for (const [name, value] of all) {
    let one = name
    for (let next = 2; one in named; next++) one = `${name} ${next}`
    named[one] = value
  }
  return named
}
