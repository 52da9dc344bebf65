import { z } from 'zod'
import { MEETS, VERDICTS } from './advice-words.ts'
import { briefSchema, PLACEMENTS, SHAPES } from './brief.ts'
import { quantity, text } from './quantity.ts'

export const compareRequestSchema = z
  .strictObject({
    brief: briefSchema,
    /** The brief of another pack, to be laid beside the first. */
    other: briefSchema.optional(),
    /** Machines by their key, "p0.xray-dual" (inspection point from 0, id of the machine); a usual choice unless given. */
    machines: z.array(text('machine', 80)).max(3).optional(),
    /** One rate for sizes and clauses of all; each point's own unless given. */
    falseRejectsPerPack: quantity('false rejects per pack', '', 1e-7, 0.2).optional(),
  })
  .meta({ id: 'CompareRequest', description: 'A brief, or two of which only the pack differs' })

const size = z.number().nullable()
const questionSchema = z.object({ ask: z.string(), because: z.string() })

const sideSchema = z.object({
  key: z.string(),
  /** A or B of two packs; empty where there is one. */
  pack: z.string(),
  equipment: z.string(),
  label: z.string(),
  point: z.string(),
  verdict: z.enum(VERDICTS),
  burden: z.number(),
  falseRejectsPerPack: z.number(),
  /** One for every piece of `pieces`; null where this brief does not look for it. */
  sizes: z.array(
    z
      .object({ askedMm: size, bestMm: size, expectedMm: size, promisedMm: size, meets: z.enum(MEETS) })
      .nullable(),
  ),
  quoted: z.array(
    z.object({ material: z.string(), sizeMm: z.number(), judgement: z.string(), text: z.string() }),
  ),
  questions: z.array(questionSchema),
  clause: z.object({
    cleanPacks: z.number().int(),
    pieces: z.array(
      z.object({
        piece: z.number().int(),
        sizeMm: z.number(),
        runs: z.number().int(),
        missesAllowed: z.number().int(),
        place: z.string(),
        lies: z.array(z.string()),
      }),
    ),
  }),
})

export const comparisonSchema = z
  .object({
    /** What differs, in sentences a buyer can repeat. */
    words: z.array(z.string()),
    pieces: z.array(
      z.object({
        material: z.string(),
        shape: z.enum(SHAPES),
        placement: z.enum(PLACEMENTS),
        lengthMm: size,
        faceMm2: size,
      }),
    ),
    sides: z.array(sideSchema),
    /** What one side makes of each piece over another: turn is promised, expected, firmer, as-before, neither, weaker, lost. */
    changes: z.array(
      z.object({
        over: z.string(),
        with: z.string(),
        piece: z.number().int(),
        better: z.boolean(),
        turn: z.string(),
        smallerByMm: size,
      }),
    ),
    askOfAll: z.array(questionSchema),
    ourselves: z.array(questionSchema),
  })
  .meta({
    id: 'Comparison',
    description: 'Machines or packs side by side: only what differs, questions, clauses',
  })

export type ComparisonData = z.infer<typeof comparisonSchema>
export type CompareRequest = z.infer<typeof compareRequestSchema>
