import { z } from 'zod'
import { LEFT, MEETS, VERDICTS } from './advice-words.ts'
import { briefSchema } from './brief.ts'
import { versionsSchema } from './reasoning.ts'

const size = z.number().nullable()

/** A contaminant by what it is, the same for every product it is asked of. */
const piece = {
  material: z.string(),
  shape: z.string(),
  lengthMm: size,
  faceMm2: size,
  placement: z.string(),
}

/** One machine at one point for one product: as it is set, and what it finds. */
export const lineMachineSchema = z.object({
  line: z.string(),
  point: z.string(),
  equipment: z.string(),
  label: z.string(),
  family: z.string(),
  burden: z.number(),
  verdict: z.enum(VERDICTS),
  /** Part of what this product alone would be given. */
  recommended: z.boolean(),
  build: z.string().nullable(),
  /** Opening of a metal detector, mm. */
  opening: z.object({ heightMm: z.number(), widthMm: z.number() }).nullable(),
  /** What a machine has to take where no build does, mm. */
  askFor: z.object({ widthMm: z.number(), heightMm: z.number() }).nullable(),
  settings: z.object({ kV: size, mA: size, frequenciesKHz: z.array(z.number()) }),
  findings: z.array(
    z.object({ ...piece, askedMm: size, promisedMm: size, expectedMm: size, meets: z.enum(MEETS) }),
  ),
})

/** A contaminant on the line of one product: what answers for it. */
export const lineAnswerSchema = z.object({
  ...piece,
  line: z.string(),
  askedMm: size,
  promisedMm: size,
  expectedMm: size,
  equipment: z.string().nullable(),
  point: z.string().nullable(),
  meets: z.enum(MEETS),
  left: z.object({ kind: z.enum(LEFT), text: z.string() }),
})

/** What is wrong with a row, by the heading of its column (empty: the row as a whole). */
export const rowProblemSchema = z.object({ column: z.string(), message: z.string() })

const row = {
  /** Line of the table the product stands on; the heading is line 1. */
  row: z.number().int(),
  title: z.string(),
  /** Columns that begin with # are carried along as they are. */
  carried: z.record(z.string(), z.string()),
}

export const lineProductSchema = z
  .discriminatedUnion('ok', [
    z.object({
      ...row,
      ok: z.literal(true),
      sentence: z.string(),
      /** The brief the row made, with the largest pack of the line in it. */
      brief: briefSchema,
      answers: z.array(lineAnswerSchema),
      machines: z.array(lineMachineSchema),
    }),
    z.object({ ...row, ok: z.literal(false), problems: z.array(rowProblemSchema) }),
  ])
  .meta({ id: 'LineProduct', description: 'One product of a table: its advice in short, or what is wrong' })

/** The product with the largest size to promise of a contaminant, and how often what was asked is met. */
export const worstSchema = z.object({
  ...piece,
  row: z.number().int(),
  title: z.string(),
  askedMm: size,
  promisedMm: size,
  expectedMm: size,
  equipment: z.string().nullable(),
  /** Products in which the size asked is met, of those that ask one. */
  met: z.number().int(),
  asked: z.number().int(),
})

export const lineTogetherSchema = z.object({
  line: z.string(),
  products: z.number().int(),
  /** The largest pack at each point, and the products it is taken from. */
  packs: z.array(
    z.object({
      point: z.string(),
      heightMm: z.number(),
      widthMm: z.number(),
      tallestRow: z.number().int(),
      widestRow: z.number().int(),
    }),
  ),
  /** Worst product per contaminant, by what answers for it in each product. */
  worst: z.array(worstSchema),
  /** The smallest set of machines that meets as much as all of them together. */
  set: z.object({
    machines: z.array(z.object({ point: z.string(), equipment: z.string(), label: z.string() })),
    /** Products in which everything asked is met, of those that ask something. */
    met: z.number().int(),
    asked: z.number().int(),
  }),
  machines: z.array(
    z.object({
      point: z.string(),
      equipment: z.string(),
      label: z.string(),
      family: z.string(),
      burden: z.number(),
      products: z.number().int(),
      build: z.string().nullable(),
      opening: z.object({ heightMm: z.number(), widthMm: z.number() }).nullable(),
      /** What to ask for where no build takes every pack, mm. */
      askFor: z.object({ widthMm: z.number(), heightMm: z.number() }).nullable(),
      /** Products that meet everything asked with this machine alone, of those that ask something. */
      met: z.number().int(),
      asked: z.number().int(),
      /** Products a rule or the pack keeps it from. */
      unfit: z.number().int(),
      kV: z.tuple([z.number(), z.number()]).nullable(),
      worst: z.array(worstSchema),
    }),
  ),
})

export const linesSummarySchema = z
  .object({
    rows: z.number().int(),
    products: z.number().int(),
    /** Rows with problems. */
    bad: z.number().int(),
    lines: z.array(lineTogetherSchema),
    /** Names of lines beyond those that are summed up. */
    moreLines: z.number().int(),
    versions: versionsSchema.nullable(),
  })
  .meta({ id: 'LinesSummary', description: 'What the products of each line have in common' })

export const linesRequestSchema = z
  .strictObject({
    csv: z.string(),
    /** What every row leaves out is taken from it. */
    brief: briefSchema.optional(),
  })
  .meta({ id: 'LinesRequest', description: 'A table of products, one a row, and the brief they differ from' })

export type LineMachine = z.infer<typeof lineMachineSchema>
export type LineAnswer = z.infer<typeof lineAnswerSchema>
export type RowProblem = z.infer<typeof rowProblemSchema>
export type LineProduct = z.infer<typeof lineProductSchema>
export type GoodProduct = Extract<LineProduct, { ok: true }>
export type Worst = z.infer<typeof worstSchema>
export type LineTogether = z.infer<typeof lineTogetherSchema>
export type LinesSummary = z.infer<typeof linesSummarySchema>
