import { z } from 'zod'
import { LEFT, MEETS } from './advice-words.ts'
import { sentenceSchema } from './register.ts'
import { demonstratedRecordSchema } from './trial-records.ts'

const size = z.number().nullable()

/** A sentence with its rule and sources, and where the rule's evaluation stands in trace.rules. */
export const tracedSchema = sentenceSchema.extend({ trace: z.string() })

const placed = {
  /** Name of the line; empty where the brief has one line and gives it no name. */
  line: z.string(),
  contaminant: z.number().int(),
}

/** One contaminant on one line: what was asked, what comes of it by which machine, and what is left to do. */
export const answerRowSchema = z.object({
  ...placed,
  askedMm: size,
  promisedMm: size,
  /** The size promised was shown by a trial on the product; null where it is predicted. */
  demonstrated: demonstratedRecordSchema.nullable(),
  expectedMm: size,
  /** The machine that answers for it: of the recommendation, else the one that comes nearest; null for none. */
  equipment: z.string().nullable(),
  point: z.string().nullable(),
  meets: z.enum(MEETS),
  /** Places of the pack where it is not found though it is found elsewhere (meets: partly). */
  places: z.array(z.string()),
  /** `rules`: all whose sentences the text is, where it is more than one. */
  left: tracedSchema.extend({ kind: z.enum(LEFT), rules: z.array(z.string()).optional() }),
})

/** The first screen as data. */
export const adviceAnswerSchema = z.object({
  /** What to put where, how much of what was asked that meets, and what it does not. */
  sentence: z.string(),
  /** The same sentence by its parts, each with its rule. */
  parts: z.array(tracedSchema.extend({ line: z.string() })),
  /** Rows with something left to do come first. */
  rows: z.array(answerRowSchema),
  /** What to ask of whoever supplies or runs the machines, before ordering. */
  ask: z.array(tracedSchema),
  /** What to test on the product. */
  test: z.array(tracedSchema),
})

/** The smallest set of machines, line by line, and what it leaves. */
export const combinationSchema = z.object({
  uses: z.array(
    z.object({
      line: z.string(),
      point: z.string(),
      equipment: z.string(),
      contaminants: z.array(z.number().int()),
      /** Those of them that are expected to be met, but not safe to promise. */
      expected: z.array(z.number().int()),
    }),
  ),
  /** Sizes asked that nothing meets, with what is achievable instead: by which machine, where, and why no more. */
  unmet: z.array(
    z.object({
      ...placed,
      achievableMm: size,
      equipment: z.string().nullable(),
      point: z.string().nullable(),
      why: z.string(),
    }),
  ),
  because: z.string(),
  /** The same by its sentences, each with its rule and line. */
  grounds: z.array(tracedSchema.extend({ line: z.string() })),
  /** Why misses of several uses may not be multiplied; empty where there is one use or none. */
  independence: z.string(),
  /** The same by its sentences, each with its rule and line. */
  independenceGrounds: z.array(tracedSchema.extend({ line: z.string() })),
  /** What can still enter behind each inspection point. */
  stillEnters: z.array(
    z.object({
      point: z.string(),
      /** Contaminants of the brief that can enter behind this point; null where the brief does not say. */
      contaminants: z.array(z.number().int()).nullable(),
      text: z.string(),
      /** Rules whose sentences the text is. */
      rules: z.array(z.string()),
    }),
  ),
})

export type AnswerRow = z.infer<typeof answerRowSchema>
export type AdviceAnswer = z.infer<typeof adviceAnswerSchema>
export type Traced = z.infer<typeof tracedSchema>
export type StillEnters = Combination['stillEnters'][number]
export type Combination = z.infer<typeof combinationSchema>
