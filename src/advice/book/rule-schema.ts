import { z } from 'zod'
import { ANSWERED_BY, EFFECTS, EVIDENCE, HEADLINE_PARTS, LEFT, SLOTS } from '../../contract/index.ts'
import { quoted } from '../../contract/quoted.ts'
import { UNITS } from '../facts/list/fact-definition.ts'
import { type Condition, conditionProblems } from './condition.ts'
import { EACH, GROUNDS, isRecordGround, RECORD_GROUNDS } from './rule-scope.ts'

/**
 * Shapes of the rule book's files. A rule file is { subject, rules: […] }.
 *
 * A rule says where it applies by two words. `appliesTo` lists its grounds: "brief" (asked once), "point"
 * (asked at every inspection point) or families of equipment (asked for every such machine at every point
 * that has one). `each: "contaminant"` asks it there once for every contaminant, so that facts like
 * contaminant.kind and finding.contrast speak of one contaminant at a time; without it the rule is asked once.
 */
const sentence = (label: string) =>
  z
    .string({ error: `${label} must be text` })
    .trim()
    .min(12, { error: `${label} must be a sentence` })
const identifier = (label: string) =>
  z.string({ error: `${label} must be text` }).regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, {
    error: `${label} is lower-case words joined by hyphens, like "foil-hides-nothing"`,
  })
const word = <const T extends readonly [string, ...string[]]>(label: string, words: T) =>
  z.enum(words, {
    error: (issue) =>
      `${label} must be one of ${words.map((w) => JSON.stringify(w)).join(', ')}; ${quoted(issue.input)} was given`,
  })

const conditionSchema = z.custom<Condition>().superRefine((value, context) => {
  for (const { path, message } of conditionProblems(value))
    context.addIssue({ code: 'custom', path: [...path], message })
  if (typeof value === 'object' && value !== null && 'fact' in value)
    context.addIssue({ code: 'custom', message: 'the outermost condition is "all", "any" or "not"' })
})

/**
 * A case the rule must answer: `brief` is laid over rules/base-brief.json (see mergeBrief), and the rule must
 * fire, or not fire, for the machine, contaminant and point named (all of them where none is named).
 */
export const exampleSchema = z.strictObject({
  brief: z.record(z.string(), z.unknown(), { error: 'brief holds what differs from the base brief' }),
  equipment: z.string().optional(),
  contaminant: z.number().int().min(0).optional(),
  point: z.string().optional(),
  /** A piece that was found, which is then asked about. */
  fragment: z.record(z.string(), z.unknown()).optional(),
  /** Two machines that are then set side by side. */
  compare: z.tuple([z.string(), z.string()]).optional(),
  fires: z.boolean({ error: 'fires must be true or false' }),
})

export const ruleSchema = z
  .strictObject({
    id: identifier('id'),
    title: sentence('title'),
    appliesTo: z.array(word('appliesTo', GROUNDS)).min(1, { error: 'appliesTo names at least one ground' }),
    each: word('each', EACH).default('once'),
    conditions: conditionSchema,
    event: z.strictObject({
      type: word('event type', EFFECTS),
      params: z.strictObject({
        text: sentence('text'),
        /** Of a headline: which part of the sentence it is. */
        part: word('part', HEADLINE_PARTS).optional(),
        /** Of what is asked for: until it is answered the machine is suitable with conditions at best. */
        open: z.boolean().optional(),
        /** Of what is required: who answers for it; the buyer unless it says "supplier". */
        answeredBy: word('answeredBy', ANSWERED_BY).optional(),
        /** Of what is left to do: its kind. */
        left: word('left', LEFT).optional(),
        /** Where it stands in the register or the check plan; rules of the effect "records" only. */
        slot: word('slot', SLOTS).optional(),
        /** What it is about within its place: "q1:yes", a question; of an item, its short name. */
        about: z.string().min(1).optional(),
        /** Steps, questions or proofs that belong together, in their order. */
        items: z
          .array(z.strictObject({ about: z.string().min(1).optional(), text: sentence('text') }))
          .min(1)
          .optional(),
      }),
    }),
    because: sentence('because'),
    exception: sentence('exception'),
    sources: z.array(identifier('source')).min(1, { error: 'a rule names at least one source' }),
    evidence: word('evidence', EVIDENCE),
    examples: z.array(exampleSchema).min(2, { error: 'a rule needs one firing and one non-firing example' }),
  })
  .superRefine(({ appliesTo, event }, context) => {
    const records = event.type === 'records'
    if (records !== (event.params.slot !== undefined))
      context.addIssue({
        code: 'custom',
        path: ['event'],
        message: 'a rule of the type "records" has a slot, and no other rule has one',
      })
    if (appliesTo.some((ground) => isRecordGround(ground) !== records))
      context.addIssue({
        code: 'custom',
        path: ['appliesTo'],
        message: `rules of the type "records" stand on ${RECORD_GROUNDS.join(', ')}, and no others do`,
      })
  })

export const thresholdSchema = z.strictObject({
  id: z.string().regex(/^[a-z][A-Za-z0-9]*$/, { error: 'a threshold id is one word in camelCase' }),
  value: z.number({ error: 'a threshold is a number' }),
  unit: word('unit', UNITS),
  label: z.string().min(3),
  source: identifier('source'),
  evidence: word('evidence', EVIDENCE),
})

/** mark: V read in a copy of the source, V2 quoted by a third party, C computed, M from memory, A assumption. */
export const ruleSourceSchema = z.strictObject({
  id: identifier('id'),
  text: sentence('text'),
  /** What the source is; the house's own book says it of every source. */
  evidence: word('evidence', EVIDENCE).optional(),
  mark: word('mark', ['V', 'V2', 'C', 'M', 'A']),
})

export const ruleFileSchema = z.strictObject({ subject: sentence('subject'), rules: z.array(ruleSchema) })

export const bookSchema = z.strictObject({
  name: z.string().min(1),
  version: z.string().min(1),
  /** Rule ids that were given up, each with the id that took its place. */
  renamed: z.record(z.string(), identifier('new id')).optional(),
  changelog: z
    .array(z.strictObject({ version: z.string(), changes: z.array(sentence('change')).min(1) }))
    .min(1, { error: 'the changelog has at least the first version' }),
})

export type Rule = z.infer<typeof ruleSchema>
export type RuleExample = z.infer<typeof exampleSchema>
export type Threshold = z.infer<typeof thresholdSchema>
export type RuleSource = z.infer<typeof ruleSourceSchema>
export type Book = z.infer<typeof bookSchema>

/** A rule with the book and file it comes from, and the subject of that file. */
export type BookRule = Rule & { readonly book: string; readonly file: string; readonly subject: string }

export interface Rulebook {
  /** For trial runs of a search, which the rules engine is spared. */
  readonly trial?: boolean
  /** Versions of the books in use, "gritwise 0.1.0" or "gritwise 0.1.0 + plant 3". */
  readonly version: string
  readonly changelog: Book['changelog']
  /** Ids given up, with the id that took their place. */
  readonly renamed: ReadonlyMap<string, string>
  /** Sorted by id, so that outcomes keep their order. */
  readonly rules: readonly BookRule[]
  readonly thresholds: ReadonlyMap<string, Threshold & { readonly book: string }>
  readonly sources: ReadonlyMap<string, RuleSource>
  /** The brief every example of a rule starts from. */
  readonly baseBrief: Readonly<Record<string, unknown>>
}
