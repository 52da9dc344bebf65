import { z } from 'zod'
import { EFFECTS, MEETS, OUTCOMES, VERDICTS } from './advice-words.ts'
import { tracedSchema } from './answer.ts'

/** What a run rests on: program, rule book, reference data. */
export const versionsSchema = z.object({ gritwise: z.string(), rules: z.string(), reference: z.string() })

const two = <T extends z.ZodType>(one: T) => z.tuple([one, one])
const size = z.number().nullable()

/** Two options of one point side by side: only what differs, the first of each pair being `first`'s. */
export const contrastSchema = z.object({
  first: z.string(),
  second: z.string(),
  /** What puts one before the other. */
  because: z.string(),
  /** The same by its sentences, each with its rule. */
  grounds: z.array(tracedSchema),
  /** null where both are the same. */
  verdict: two(z.enum(VERDICTS)).nullable(),
  burden: two(z.number()).nullable(),
  sizes: z.array(
    z.object({
      contaminant: z.number().int(),
      meets: two(z.enum(MEETS)),
      expectedMm: two(size),
      cautiousMm: two(size),
    }),
  ),
  /** Rules with different outcomes; null where a rule was not asked of that machine. */
  rules: z.array(
    z.object({
      rule: z.string(),
      title: z.string(),
      type: z.enum(EFFECTS),
      contaminant: z.number().int().nullable(),
      outcomes: two(z.enum(OUTCOMES).nullable()),
      /** What the rule says where it fired. */
      text: z.string(),
    }),
  ),
})

export const closeCallSchema = z.object({
  first: z.string(),
  /** The option that comes first nearer to the expected values. */
  second: z.string(),
  /** The contaminants whose size decides between the two. */
  contaminants: z.array(z.number().int()),
  because: z.string(),
  /** The test on the product that would settle it. */
  test: z.string(),
  /** Both by their sentences, each with its rule. */
  grounds: z.array(tracedSchema),
})

export const missingSchema = z.object({
  path: z.string(),
  label: z.string(),
  /** Verdicts and met sizes it can turn, plus the mean change of size as a natural logarithm. */
  score: z.number(),
  effect: z.string(),
  /** The same by its sentences, each with its rule. */
  grounds: z.array(tracedSchema),
})

/** What changes when the same brief is judged by another rule book. */
export const differenceSchema = z.object({
  from: versionsSchema,
  to: versionsSchema,
  /** By key of trace.rules; null where the book has no such rule. */
  rules: z.array(
    z.object({
      key: z.string(),
      id: z.string(),
      title: z.string(),
      point: z.string(),
      equipment: z.string(),
      contaminant: z.number().int().nullable(),
      from: z.enum(OUTCOMES).nullable(),
      to: z.enum(OUTCOMES).nullable(),
      /** True where the outcome is the same and what is said differs. */
      words: z.boolean(),
    }),
  ),
  verdicts: z.array(
    z.object({
      point: z.string(),
      equipment: z.string(),
      label: z.string(),
      from: z.enum(VERDICTS),
      to: z.enum(VERDICTS),
      ranks: two(z.number().int().nullable()),
    }),
  ),
  summary: two(z.string()).nullable(),
})

export type Versions = z.infer<typeof versionsSchema>
export type Contrast = z.infer<typeof contrastSchema>
export type CloseCall = z.infer<typeof closeCallSchema>
export type Missing = z.infer<typeof missingSchema>
export type Difference = z.infer<typeof differenceSchema>
