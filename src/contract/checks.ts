import { z } from 'zod'
import { sentenceSchema } from './register.ts'

/** Check plan of an advice: per machine, with which pieces, where, how often, and what follows. */

const item = z.object({ about: z.string(), text: z.string(), rule: z.string() })

export const positionSchema = z.object({
  name: z.string(),
  /** Where it lies, as shares of length (travel), width and height of the pack; for the picture. */
  along: z.number(),
  across: z.number(),
  up: z.number(),
})

export const checkPieceSchema = z.object({
  contaminant: z.number().int(),
  label: z.string(),
  pieceMaterial: z.string(),
  shape: z.string(),
  lengthMm: z.number().nullable(),
  faceMm2: z.number().nullable(),
  sizeToFindMm: z.number().nullable(),
  predictedMm: z.number().nullable(),
  demonstratedMm: z.number().nullable(),
  /** null: no piece of the series serves; the size cannot be verified with a piece. */
  routineMm: z.number().nullable(),
  /** Chance of one run in the worst place on the curve the piece was chosen by. */
  chance: z.number().nullable(),
  /** The same two sizes under a logit: chance of this piece, and the piece that rule would choose. */
  logit: z.object({ chance: z.number().nullable(), routineMm: z.number().nullable() }),
  falseFailuresPerYear: z.number().nullable(),
  notices: z.array(z.object({ worseBy: z.number(), chance: z.number(), inADay: z.number() })),
  positions: z.array(positionSchema),
  /** Which curve it was chosen by. */
  basis: z.enum(['demonstrated', 'cautious', 'none']),
  calculation: z.string(),
})

export const rejectPlanSchema = z.object({
  type: z.string(),
  delayMs: z.number().nullable(),
  /** Acts at least and at most so long. */
  windowMs: z.tuple([z.number(), z.number()]).nullable(),
  shortestGapMm: z.number().nullable(),
  neededGapMm: z.number().nullable(),
  possible: z.boolean().nullable(),
  because: z.array(sentenceSchema),
})

export const checkPointSchema = z.object({
  line: z.string(),
  point: z.string(),
  pointIndex: z.number().int(),
  equipment: z.string(),
  label: z.string(),
  family: z.string(),
  stage: z.string(),
  unit: z.enum(['packs', 'kg']),
  pieces: z.array(checkPieceSchema),
  intervalMin: z.number().nullable(),
  /** Why that interval; empty where none is set and the draft is drawn up with another. */
  intervalFrom: z.string(),
  draftIntervalMin: z.number(),
  holdTable: z.array(
    z.object({
      intervalMin: z.number(),
      packsHeld: z.number(),
      kgHeld: z.number().nullable(),
      hoursToReinspect: z.number(),
      checksPerDay: z.number(),
      minutesPerDay: z.number(),
    }),
  ),
  assumed: z.array(z.object({ id: z.string(), label: z.string(), value: z.string() })),
  workload: z
    .object({
      falsePerDay: z.number(),
      truePerDay: z.number().nullable(),
      chanceOfPiece: z.number().nullable(),
      hoursToOpenAll: z.number(),
    })
    .nullable(),
  reject: rejectPlanSchema,
  carrier: z.array(sentenceSchema),
  notes: z.array(sentenceSchema),
  when: z.array(item),
  proofs: z.array(z.object({ link: z.string(), failure: z.string(), proof: z.string(), rule: z.string() })),
  ifFails: z.array(item),
  rejects: z.array(item),
  records: z.array(item),
  keeping: z.array(item),
  drill: z.array(item),
  /** What keeps the person who checks unhurt. */
  careful: z.array(sentenceSchema),
})

export const checksSchema = z.object({
  points: z.array(checkPointSchema),
  siteList: z.array(
    z.object({
      id: z.string(),
      question: z.string(),
      answer: z.string(),
      because: z.string(),
      rule: z.string(),
    }),
  ),
})

export type Checks = z.infer<typeof checksSchema>
export type CheckPoint = z.infer<typeof checkPointSchema>
export type CheckPiece = z.infer<typeof checkPieceSchema>
export type PiecePosition = z.infer<typeof positionSchema>
export type PlanItem = z.infer<typeof item>
