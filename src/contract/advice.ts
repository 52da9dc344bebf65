import { z } from 'zod'
import { ANSWERED_BY, EFFECTS, EVIDENCE, MEETS, ORIGINS, OUTCOMES, TRUTHS, VERDICTS } from './advice-words.ts'
import { adviceAnswerSchema, combinationSchema, tracedSchema } from './answer.ts'
import { briefSchema } from './brief.ts'
import { checksSchema } from './checks.ts'
import { closeCallSchema, contrastSchema, missingSchema, versionsSchema } from './reasoning.ts'
import { registerSchema } from './register.ts'
import { demonstratedRecordSchema } from './trial-records.ts'

export * from './advice-words.ts'

const size = z.number().nullable()

/** A place of the pack, and what is found of this contaminant there. */
export const zoneSchema = z.object({
  name: z.string(),
  state: z.enum(['findable', 'degraded', 'blind']),
  /** Share of the pack's inside that the place takes; null where geometry does not give it. */
  share: z.number().nullable(),
  /** Container material the beam crosses there, mm; null where geometry does not allow computing it. */
  pathMm: z.number().nullable(),
  sizes: z.object({ bestMm: size, expectedMm: size, cautiousMm: size }),
  canLieThere: z.boolean(),
  /** The piece sinks or floats to this place, so that it decides. */
  settlesThere: z.boolean(),
  why: z.string(),
})

export const findingSchema = z.object({
  contaminant: z.number().int(),
  material: z.string(),
  shape: z.string(),
  placement: z.string(),
  lengthMm: z.number().nullable(),
  faceMm2: z.number().nullable(),
  bestMm: size,
  /** Lowest and highest of the best possible size over what depth, density and attenuation leave open. */
  bestRangeMm: z.tuple([z.number(), z.number()]).nullable(),
  /** Far from where practice was read, in what, and by what factor cautiousMm is widened for it; null where near. */
  extrapolated: z.object({ by: z.array(z.string()), factor: z.number() }).nullable(),
  halfMm: size,
  expectedMm: size,
  sureMm: size,
  cautiousMm: size,
  chanceAtMustFind: z.number().nullable(),
  /** Flakes only: chance averaged over random orientations at the size to find (or at expectedMm). */
  chanceAnyOrientation: z.number().nullable(),
  meets: z.enum(MEETS),
  mustFindMm: z.number().nullable(),
  /** Shown by a trial on the product, which then stands for the size to promise; null where none was. */
  demonstrated: demonstratedRecordSchema.nullable(),
  /** The sizes are those of a machine measured in a trial, not of the prediction alone. */
  measured: z.boolean(),
  curve: z.object({ sizesMm: z.array(z.number()), chance: z.array(z.number()) }),
  zones: z.array(zoneSchema),
  /** The assumption that widens the range from expected to cautious most; empty where there is none. */
  widest: z.string(),
  /** Why a size is null, or what limits it; empty when there is nothing to say. */
  note: z.string(),
  calculation: z.string(),
})

export const reasonSchema = z.object({
  rule: z.string(),
  type: z.enum(EFFECTS),
  text: z.string(),
  because: z.string(),
  truth: z.enum(TRUTHS),
  /** The verdict would differ without it. */
  decisive: z.boolean(),
  /** Key of its evaluated conditions in trace.rules. */
  trace: z.string(),
  evidence: z.enum(EVIDENCE),
  sources: z.array(z.string()),
  book: z.string(),
  title: z.string(),
  /** When the rule does not hold although its conditions do. */
  exception: z.string(),
  /** Of what is required: whether the supplier answers for it or the buyer; null for every other reason. */
  answeredBy: z.enum(ANSWERED_BY).nullable(),
  /** The contaminant it speaks of; null when it speaks of the machine, the pack or the brief. */
  contaminant: z.number().int().nullable(),
})

export const whyNotSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('rule'), rule: z.string(), text: z.string() }),
  z.object({
    kind: z.literal('size'),
    contaminant: z.number().int(),
    /** Further contaminants of which the same sentence holds. */
    others: z.array(z.number().int()),
    gapMm: z.number().nullable(),
    text: z.string(),
    /** The same by its sentences, each with its rule. */
    grounds: z.array(tracedSchema),
  }),
  /** Neither a rule nor a size speaks against it: what the order says. */
  z.object({ kind: z.literal('order'), text: z.string() }),
])

export const cautionSchema = z.object({ id: z.string(), text: z.string(), sources: z.array(z.string()) })

export const optionSchema = z.object({
  equipment: z.string(),
  label: z.string(),
  family: z.string(),
  rank: z.number().int().nullable(),
  burden: z.number(),
  verdict: z.enum(VERDICTS),
  /** Which build of the technology is meant: the smallest usual one that takes the pack; null where there are no builds. */
  build: z.string().nullable(),
  /** What a machine has to take where none compared here does, mm: ask for it; null where the build takes the pack. */
  askFor: z.object({ widthMm: z.number(), heightMm: z.number() }).nullable(),
  because: z.string(),
  /** Where the beam comes from; null for what has none. */
  beam: z.enum(['down', 'side']).nullable(),
  /** What `because` rests on, sentence by sentence, each with its rule. */
  grounds: z.array(tracedSchema),
  settings: z.object({
    kV: z.number().nullable(),
    mA: z.number().nullable(),
    frequenciesKHz: z.array(z.number()),
  }),
  findings: z.array(findingSchema),
  reasons: z.array(reasonSchema),
  whyNot: z.array(whyNotSchema),
  cautions: z.array(cautionSchema),
})

export const removalSchema = z.object({
  equipment: z.string(),
  label: z.string(),
  contaminant: z.number().int(),
  shareRemoved: z.tuple([z.number(), z.number()]),
  ceiling: z.number(),
  neverRemoves: z.string(),
  condition: z.string(),
  because: z.string(),
  goodProductLost: z.tuple([z.number(), z.number()]).nullable(),
  goodProductLostUnit: z.string(),
  /** Why a rule speaks against it here; empty where none does. */
  unsuitable: z.string(),
  /** What the rules say of it. */
  reasons: z.array(reasonSchema),
  calculation: z.string(),
})

/** A condition with its truth: the evaluated tree of a rule. */
export interface ConditionTrace {
  kind: 'all' | 'any' | 'not' | 'leaf'
  truth: (typeof TRUTHS)[number]
  children?: ConditionTrace[]
  fact?: string
  label?: string
  value?: string | number | boolean | null
  unit?: string
  origin?: (typeof ORIGINS)[number]
  calculation?: string
  operator?: string
  threshold?: {
    id: string | null
    value: string | number | boolean | (string | number)[] | null
    unit: string
  }
  margin?: { absolute: number; relative: number | null } | null
}

export const conditionTraceSchema: z.ZodType<ConditionTrace> = z.object({
  kind: z.enum(['all', 'any', 'not', 'leaf']),
  truth: z.enum(TRUTHS),
  children: z.array(z.lazy((): z.ZodType<ConditionTrace> => conditionTraceSchema)).optional(),
  fact: z.string().optional(),
  label: z.string().optional(),
  value: z.union([z.string(), z.number(), z.boolean(), z.null()]).optional(),
  unit: z.string().optional(),
  origin: z.enum(ORIGINS).optional(),
  calculation: z.string().optional(),
  operator: z.string().optional(),
  threshold: z
    .object({
      id: z.string().nullable(),
      value: z.union([
        z.string(),
        z.number(),
        z.boolean(),
        z.array(z.union([z.string(), z.number()])),
        z.null(),
      ]),
      unit: z.string(),
    })
    .optional(),
  margin: z.object({ absolute: z.number(), relative: z.number().nullable() }).nullable().optional(),
}) as z.ZodType<ConditionTrace>

export const factSchema = z.object({
  id: z.string(),
  /** Where it holds: "brief", "p0", "p0.xray-dual" or "p0.xray-dual.c1". */
  scope: z.string(),
  label: z.string(),
  value: z.union([z.string(), z.number(), z.boolean(), z.null()]),
  unit: z.string(),
  origin: z.enum(ORIGINS),
  calculation: z.string().optional(),
})

export const calculationSchema = z.object({
  id: z.string(),
  label: z.string(),
  symbol: z.string(),
  value: z.union([z.number(), z.string(), z.null()]),
  unit: z.string(),
  formula: z.string(),
  inputs: z.array(z.string()),
  sources: z.array(z.string()),
})

export const ruleTraceSchema = z.object({
  /** Where it was asked and which rule, "p1.xray-dual.c0.rule-id": the same in every run on the same brief. */
  key: z.string(),
  id: z.string(),
  title: z.string(),
  type: z.enum(EFFECTS),
  book: z.string(),
  equipment: z.string(),
  point: z.string(),
  contaminant: z.number().int().nullable(),
  /** The line it was asked of, where it was asked of one. */
  line: z.string().optional(),
  outcome: z.enum(OUTCOMES),
  conditions: conditionTraceSchema,
  /**
   * The shortest set of leaves that settles the outcome by itself, as paths of child numbers from the root
   * ("0.1"; "" is the root). Of an unknown or not applicable rule: the values that are missing.
   */
  decisive: z.array(z.string()),
})

export const sourceSchema = z.object({ id: z.string(), text: z.string(), mark: z.string() })

export const adviceSchema = z
  .object({
    brief: briefSchema,
    assumed: z.array(
      z.object({
        path: z.string(),
        label: z.string(),
        value: z.union([z.string(), z.number(), z.boolean()]),
        range: z.tuple([z.number(), z.number()]).nullable(),
        because: z.string(),
      }),
    ),
    /** What is not given, by how much it could change the advice; most first. */
    missing: z.array(missingSchema),
    versions: versionsSchema,
    summary: z.string(),
    points: z.array(
      z.object({
        name: z.string(),
        /** What the rules ask of the point itself, whichever machine stands there. */
        reasons: z.array(reasonSchema),
        options: z.array(optionSchema),
        removals: z.array(removalSchema),
        /** The first option against each other ranked one: only what differs. */
        contrasts: z.array(contrastSchema),
        /** Another option comes first somewhere between expected and cautious; null when none does. */
        closeCall: closeCallSchema.nullable(),
      }),
    ),
    answer: adviceAnswerSchema,
    combination: combinationSchema,
    /** For each contaminant that no machine here meets: how to keep it out. */
    prevention: z.array(
      z.object({
        contaminant: z.number().int(),
        /** Names of the lines on which nothing meets it. */
        lines: z.array(z.string()),
        text: z.string(),
        sources: z.array(z.string()),
        /** The rules that say it. */
        rules: z.array(z.string()),
      }),
    ),
    changes: z.array(
      z.object({
        inputs: z.array(
          z.object({
            path: z.string(),
            from: z.union([z.number(), z.string()]),
            to: z.union([z.number(), z.string()]),
          }),
        ),
        /** The machine that then meets more. */
        equipment: z.string(),
        effect: z.string(),
        /** The same by its sentences, each with its rule. */
        grounds: z.array(tracedSchema),
        verified: z.boolean(),
      }),
    ),
    /** Says so when no change is shown. */
    changesNote: z.string(),
    changesGrounds: z.array(tracedSchema),
    quotes: z.array(
      z.object({
        quote: z.number().int(),
        judgement: z.enum(['better-than-possible', 'inside', 'loose', 'cannot-tell']),
        text: z.string(),
        questions: z.array(z.string()),
        /** Judgement and questions by their sentences, each with its rule. */
        grounds: z.array(tracedSchema),
      }),
    ),
    register: registerSchema,
    checks: checksSchema,
    trace: z.object({
      versions: versionsSchema,
      facts: z.array(factSchema),
      calculations: z.array(calculationSchema),
      rules: z.array(ruleTraceSchema),
      sources: z.array(sourceSchema),
    }),
    cautions: z.array(cautionSchema),
  })
  .meta({ id: 'Advice', description: 'Technologies compared for a brief, with sizes, reasons and sources' })

export type Advice = z.infer<typeof adviceSchema>
export type Option = z.infer<typeof optionSchema>
export type Finding = z.infer<typeof findingSchema>
export type Zone = z.infer<typeof zoneSchema>
export type Reason = z.infer<typeof reasonSchema>
export type WhyNot = z.infer<typeof whyNotSchema>
export type Caution = z.infer<typeof cautionSchema>
export type Removal = z.infer<typeof removalSchema>
export type Fact = z.infer<typeof factSchema>
export type Calculation = z.infer<typeof calculationSchema>
export type RuleTrace = z.infer<typeof ruleTraceSchema>
export type Source = z.infer<typeof sourceSchema>
