import { z } from 'zod'
import { briefSchema, PLACEMENTS, SHAPES } from './brief.ts'
import { count, oneOf, quantity, text } from './quantity.ts'
import { demonstratedRecordSchema, measuredSchema } from './trial-records.ts'

/** One line of a trial: a piece run on a machine; or, with the material empty, packs without pieces. */
export const runRowSchema = z.strictObject({
  equipment: text('equipment', 60).min(1, { error: 'name the machine' }),
  piece: text('piece', 60).optional(),
  pack: text('pack', 60).optional(),
  shift: text('shift', 60).optional(),
  order: count('order', 0, 1e6).optional(),
  setting: text('setting', 60).optional(),
  operator: text('operator', 60).optional(),
  material: text('material', 60),
  shape: oneOf('shape', SHAPES).optional(),
  sizeMm: quantity('size', 'mm', 0.05, 50).optional(),
  lengthMm: quantity('wire length', 'mm', 0.1, 1000).optional(),
  faceMm2: quantity('flake face', 'mm²', 0.01, 100000).optional(),
  placement: oneOf('placement', PLACEMENTS).optional(),
  position: text('position', 80).optional(),
  runs: count('runs', 1, 1e6),
  found: count('found', 0, 1e6),
  signal: quantity('signal', '', 0, 1e12).optional(),
  threshold: quantity('threshold', '', 0, 1e12).optional(),
  note: text('note', 400).optional(),
  date: z.iso.date({ error: 'date must be year-month-day, as 2026-11-27' }).optional(),
})

/** The columns of a table of runs, in the order they are written; any order is read. */
export const RUN_COLUMNS = [
  'equipment',
  'piece',
  'pack',
  'shift',
  'order',
  'setting',
  'operator',
  'material',
  'shape',
  'sizeMm',
  'lengthMm',
  'faceMm2',
  'placement',
  'position',
  'runs',
  'found',
  'signal',
  'threshold',
  'note',
  'date',
] as const satisfies readonly (keyof z.infer<typeof runRowSchema>)[]

/** What a supplier and a buyer agreed on: so many pieces of a size, and clean packs (0: not part of it). */
export const clauseSchema = z.strictObject({
  sizeMm: quantity('size of the clause', 'mm', 0.05, 50),
  pieces: count('pieces of the clause', 1, 10_000),
  misses: count('misses allowed', 0, 1000),
  cleanPacks: count('clean packs of the clause', 0, 1e6),
  cleanRejects: count('clean packs that may be rejected', 0, 10_000),
})

/** Runs as a table's text or as rows, and the brief they are held against, if any. */
export const runsRequestSchema = z
  .strictObject({
    csv: z.string({ error: 'csv must be the text of a table of runs' }).optional(),
    rows: z.array(runRowSchema).optional(),
    brief: briefSchema.optional(),
    /** The machine of the brief that was run, where the rows name it by its plate. */
    machine: text('machine', 60).optional(),
    link: oneOf('link', ['logit', 'probit']).optional(),
    clause: clauseSchema.optional(),
  })
  .meta({ id: 'RunsRequest', description: 'Test runs: csv or rows, one of the two' })

const mm = z.number().nullable()
const chance = z.number()

/** Packs without pieces: how many, and how many of them were rejected. */
export const cleanRunSchema = z.object({
  packs: z.number().int(),
  rejects: z.number().int(),
  rate: chance,
  /** Exact one-sided 95 % bounds, each side by itself. */
  low: chance,
  high: chance,
})

export const exactRowSchema = z.object({
  sizeMm: z.number(),
  /** Units: one piece placed anew in one pack; several runs of one unit count once. */
  runs: z.number(),
  /** Units found in every run of theirs. */
  found: z.number(),
  lower95: chance,
})

export const signalFitSchema = z.object({
  pieces: z.number(),
  /** Pieces without a reading above the threshold: known only to lie below it. */
  censored: z.number(),
  b0: z.number(),
  b1: z.number(),
  /** Standard deviation of ln signal about the line. */
  spread: z.number(),
  threshold: z.number(),
  a50: mm,
  a90: mm,
  a9095: mm,
  /** Largest signal of a clean pack, and the signal expected of the piece at a9095 (else a90) over it. */
  productSignal: z.number().nullable(),
  /** Size whose expected signal is that largest one. */
  productSignalMm: mm,
  margin: z.number().nullable(),
})

export const demonstratedSchema = z.object({
  sizeMm: z.number(),
  basis: z.enum(['curve', 'exact']),
  /** Day of the last run; null where the rows carry none. */
  date: z.string().nullable(),
  packs: z.number(),
})

export const runGroupSchema = z.object({
  equipment: z.string(),
  setting: z.string(),
  material: z.string(),
  shape: z.enum(SHAPES),
  lengthMm: z.number().nullable(),
  faceMm2: z.number().nullable(),
  placement: z.enum(PLACEMENTS),
  position: z.string(),
  /** Units. */
  pieces: z.number(),
  runs: z.number(),
  found: z.number(),
  simulated: z.boolean(),
  /** Day of the last run; empty where the rows carry none. */
  date: z.string(),
  /** False where no pack is named and each run is taken for a pack of its own (assumed). */
  packsNamed: z.boolean(),
  clean: cleanRunSchema.nullable(),
  /** What repeated runs of a unit count for in the curve; null where every unit was run once. */
  clusters: z
    .object({
      /** Intra-cluster correlation of the runs of a unit; null: too few units say so, each counts once. */
      likeness: z.number().nullable(),
      /** Runs over runs that count. */
      designEffect: z.number(),
      counted: z.number(),
    })
    .nullable(),
  fit: z
    .object({
      link: z.enum(['logit', 'probit']),
      b0: z.number(),
      b1: z.number(),
      floor: chance,
      method: z.enum(['ml', 'firth']),
      /** No size was both found and missed, or only one was: maximum likelihood has no value. */
      separated: z.boolean(),
    })
    .nullable(),
  a50: mm,
  a90: mm,
  a9095: mm,
  a9095Plain: mm,
  a9095Delta: mm,
  demonstrated: demonstratedSchema.nullable(),
  words: z.string(),
  /** Sizes found without a miss down to this one; the reading lies between the next smaller size and it. */
  card: z.object({ downToMm: z.number(), interval: z.tuple([mm, z.number()]) }).nullable(),
  exact: z.array(exactRowSchema),
  signal: signalFitSchema.nullable(),
})

export const pairedSchema = z.object({
  first: z.string(),
  second: z.string(),
  both: z.number(),
  onlyFirst: z.number(),
  onlySecond: z.number(),
  neither: z.number(),
  /** Exact McNemar, two-sided; null where no pair differs. */
  p: z.number().nullable(),
  words: z.string(),
})

export type RunRow = z.infer<typeof runRowSchema>
export type CleanRun = z.infer<typeof cleanRunSchema>
export type ExactRow = z.infer<typeof exactRowSchema>
export type SignalFit = z.infer<typeof signalFitSchema>
export type Demonstrated = z.infer<typeof demonstratedSchema>
export type RunGroup = z.infer<typeof runGroupSchema>
export type Paired = z.infer<typeof pairedSchema>

/** One group of runs held against what the advice predicts for the same machine, point and contaminant. */
export const predictionSchema = z.object({
  /** Number of the group. */
  group: z.number().int(),
  point: z.string(),
  contaminant: z.number().int(),
  bestMm: mm,
  expectedMm: mm,
  cautiousMm: mm,
  curve: z.object({ sizesMm: z.array(z.number()), chance: z.array(z.number()) }),
  /** Sizes as run, beside the chance predicted at each. */
  sizes: z.array(z.object({ sizeMm: z.number(), runs: z.number(), found: z.number(), predicted: chance })),
  /** Share of trials that would come out as unlikely as this if the prediction, with its stated spread, were right. */
  agreement: chance.nullable(),
  /** Demonstrated below the best possible size: something in the brief or the trial is not as stated. */
  conflict: z.boolean(),
  words: z.string(),
})

export const runsAnswerSchema = z
  .object({
    groups: z.array(runGroupSchema),
    /** Clean packs by machine and setting. */
    clean: z.array(z.object({ equipment: z.string(), setting: z.string(), run: cleanRunSchema })),
    paired: z.array(pairedSchema),
    /** What the rows do not hold and would have to, in sentences. */
    missing: z.array(z.string()),
    /** Null without a brief. */
    prediction: z.array(predictionSchema).nullable(),
    /** What the trial adds to the brief, to be kept with it; null without a brief. */
    records: z
      .object({ measured: z.array(measuredSchema), demonstrated: z.array(demonstratedRecordSchema) })
      .nullable(),
    /** Null where no clause was given; empty where its size was not run. */
    clause: z.array(z.object({ group: z.number().int(), met: z.boolean(), words: z.string() })).nullable(),
    plan: z.null(),
    problems: z.array(z.object({ path: z.string(), message: z.string() })),
  })
  .meta({ id: 'RunsAnswer', description: 'Test runs on the product, read with their confidence' })

export type Prediction = z.infer<typeof predictionSchema>
export type Clause = z.infer<typeof clauseSchema>
export type ClauseReading = NonNullable<RunsAnswer['clause']>[number]
export type RunsAnswer = z.infer<typeof runsAnswerSchema>
