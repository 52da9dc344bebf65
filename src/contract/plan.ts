import { z } from 'zod'
import { briefSchema, PLACEMENTS, SHAPES } from './brief.ts'
import { count, quantity, text } from './quantity.ts'

export const planRequestSchema = z
  .strictObject({
    brief: briefSchema,
    contaminant: count('number of the contaminant, from 0,', 0, 39),
    /** Size to show; the size you must find unless given. */
    sizeMm: quantity('size to show', 'mm', 0.05, 50).optional(),
    confidence: quantity('confidence', '', 0.8, 0.99).optional(),
    power: quantity('power', '', 0.5, 0.99).optional(),
    /** The machine and the inspection point; the best placed machine that finds it unless given. */
    equipment: text('equipment', 60).optional(),
    point: count('number of the inspection point, from 0,', 0, 11).optional(),
    seed: count('seed', 0, 2 ** 31 - 1).optional(),
  })
  .meta({ id: 'PlanRequest', description: 'A brief, and the size that a trial is to show' })

const chance = z.number()

/** Chance that the trial shows it: as predicted, and if the machine needs larger sizes by this much. */
const powerSchema = z.object({ asPredicted: chance, fiveWorse: chance, tenWorse: chance })

export const curveRouteSchema = z.object({
  sizesMm: z.array(z.number()),
  chances: z.array(chance),
  perSize: z.number().int(),
  pieces: z.number().int(),
  power: powerSchema,
  enough: z.boolean(),
})

export const oneSizeRouteSchema = z.object({
  sizeMm: z.number(),
  pieces: z.number().int(),
  /** Most that may be missed. */
  misses: z.number().int(),
  power: powerSchema,
  enough: z.boolean(),
})

export const planPieceSchema = z.object({
  order: z.number().int(),
  part: z.enum(['clause', 'curve']),
  sizeMm: z.number(),
  pack: z.string(),
  position: z.string(),
  lie: z.string(),
})

export const planSchema = z
  .object({
    equipment: z.string(),
    label: z.string(),
    point: z.string(),
    contaminant: z.number().int(),
    material: z.string(),
    shape: z.enum(SHAPES),
    lengthMm: z.number().nullable(),
    faceMm2: z.number().nullable(),
    placement: z.enum(PLACEMENTS),
    sizeMm: z.number(),
    confidence: chance,
    power: chance,
    predicted: z.object({ a50: z.number(), a90: z.number(), place: z.string() }),
    curve: z.array(curveRouteSchema),
    oneSize: z.array(oneSizeRouteSchema),
    /** What is carried out: the clause by one size, and a few at each size that draw the curve; null: no route. */
    chosen: z.object({ clause: oneSizeRouteSchema, drawn: curveRouteSchema }).nullable(),
    /** Smallest size that the clause would show with the power asked, were it asked instead. */
    reachableMm: z.number().nullable(),
    clean: z.object({
      packs: z.number().int(),
      allowed: z.number().int(),
      limit: chance,
      hoped: chance,
      power: chance,
      minutes: z.number().nullable(),
    }),
    positions: z.array(z.object({ name: z.string(), sizeMm: z.number().nullable(), counted: z.boolean() })),
    lies: z.array(z.string()),
    packs: z.number().int(),
    pieces: z.array(planPieceSchema),
    steps: z.array(z.string()),
    clause: z.string(),
    words: z.string(),
  })
  .meta({ id: 'Plan', description: 'Which pieces, where, how many runs, and the chance that they show it' })

export type PlanRequest = z.infer<typeof planRequestSchema>
export type Plan = z.infer<typeof planSchema>
export type CurveRoute = z.infer<typeof curveRouteSchema>
export type OneSizeRoute = z.infer<typeof oneSizeRouteSchema>
export type PlanPiece = z.infer<typeof planPieceSchema>
