import { z } from 'zod'
import { cautionSchema, removalSchema, ruleTraceSchema, zoneSchema } from './advice.ts'
import { MEETS } from './advice-words.ts'
import { tracedSchema } from './answer.ts'
import { briefSchema, PLACEMENTS, SHAPES } from './brief.ts'
import { oneOf, quantity, text } from './quantity.ts'
import { versionsSchema } from './reasoning.ts'

/** A piece somebody found, as it was measured. */
export const fragmentSchema = z.strictObject({
  material: text('material of the fragment', 60).min(1, { error: 'name the material of the fragment' }),
  shape: oneOf('shape', SHAPES).optional(),
  sizeMm: quantity('size of the fragment', 'mm', 0.05, 50),
  lengthMm: quantity('wire length', 'mm', 0.1, 1000).optional(),
  faceMm2: quantity('flake face', 'mm²', 0.01, 100000).optional(),
  placement: oneOf('placement', PLACEMENTS).optional(),
})

/** A fragment and the line it came from. */
export const fragmentRequestSchema = z
  .strictObject({ brief: briefSchema, fragment: fragmentSchema })
  .meta({ id: 'FragmentRequest', description: 'A found piece and the brief of the line it came from' })

const chance = z.number().nullable()

export const fragmentOptionSchema = z.object({
  equipment: z.string(),
  label: z.string(),
  /** Named in the brief; otherwise a machine that could stand there. */
  installed: z.boolean(),
  /** Why this machine cannot take the pack at all; empty where it can. */
  excluded: z.string(),
  settings: z.string(),
  /** At the size of the fragment, worst place, weaker orientation; null where no size is computed. */
  chance,
  /** Flakes only: over random orientations. */
  chanceAnyOrientation: chance,
  meets: z.enum(MEETS),
  bestMm: chance,
  expectedMm: chance,
  cautiousMm: chance,
  because: z.array(z.string()),
  /** The sentences of `because` that rules say, each with its rule. */
  grounds: z.array(tracedSchema),
  /** Rules that speak of this piece in this machine. */
  rules: z.array(z.object({ rule: z.string(), title: z.string(), text: z.string() })),
  zones: z.array(zoneSchema),
})

export const fragmentAnswerSchema = z
  .object({
    fragment: z.object({
      material: z.string(),
      label: z.string(),
      shape: z.enum(SHAPES),
      sizeMm: z.number(),
      lengthMm: z.number().nullable(),
      faceMm2: z.number().nullable(),
      placement: z.enum(PLACEMENTS),
    }),
    summary: z.string(),
    points: z.array(
      z.object({
        name: z.string(),
        options: z.array(fragmentOptionSchema),
        removals: z.array(removalSchema),
        /** Whether it can have entered behind this point. */
        stillEnters: z.string(),
      }),
    ),
    /** All machines of the line together; null with fewer than two. */
    together: z
      .object({
        uses: z.array(z.object({ point: z.string(), equipment: z.string() })),
        /** As if all missed the same pieces. */
        atLeast: z.number(),
        /** As if all missed independently. */
        atMost: z.number(),
        because: z.string(),
      })
      .nullable(),
    questions: z.array(z.string()),
    /** Summary, together and questions by their sentences, each with its rule. */
    grounds: z.array(tracedSchema),
    trace: z.object({ rules: z.array(ruleTraceSchema) }),
    cautions: z.array(cautionSchema),
    versions: versionsSchema,
  })
  .meta({ id: 'FragmentAnswer', description: 'Chance of finding a found piece at each point and machine' })

export type Fragment = z.infer<typeof fragmentSchema>
export type FragmentOption = z.infer<typeof fragmentOptionSchema>
export type FragmentAnswer = z.infer<typeof fragmentAnswerSchema>
