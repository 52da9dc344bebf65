import { z } from 'zod'

/** Hazard register of an advice: per line and contaminant, what enters, what stands against it, what is left. */

const sentence = z.object({
  text: z.string(),
  rule: z.string(),
  sources: z.array(z.string()),
})

export const questionSchema = z.object({
  /** Answers of the brief name it: "c0.p1.q5". */
  id: z.string(),
  question: z.string(),
  answer: z.string(),
  because: z.string(),
  /** Filled in from the brief and the advice, said by a person, or not known. */
  from: z.enum(['computed', 'entered', 'assumed', 'unknown']),
  /** The rule that asks it. */
  questionRule: z.string(),
  /** The rule that filled it in; empty where a person answered. */
  rule: z.string(),
})

export const controlSchema = z.object({
  point: z.string(),
  equipment: z.string(),
  label: z.string(),
  /** Size promised by the prediction in the worst place a piece can lie, mm. */
  predictedMm: z.number().nullable(),
  demonstratedMm: z.number().nullable(),
  sizeToFindMm: z.number().nullable(),
  /** Chance averaged over everything that arrives before any control. */
  meanChance: z.number(),
  /** The same at the promised sizes in place of the expected ones; null where none is promised. */
  meanChanceCautious: z.number().nullable(),
  workingShare: z.number(),
  class: z.string(),
  /** The class by the questions where a person set another one, with the reason; else the same. */
  proposed: z.string(),
  because: z.string(),
  /** What the class still hangs on before it is more than a proposal. */
  owed: z.array(z.string()),
  questions: z.array(questionSchema),
  criticalLimit: z.array(sentence),
  monitoring: z.array(sentence),
  verification: z.array(sentence),
  notes: z.array(sentence),
  calculation: z.string(),
})

export const missesSchema = z.object({
  fromLengthMm: z.number(),
  before: z.number().nullable(),
  after: z.number().nullable(),
  /** 5 and 95 % of what passes, the controls independent given the size. */
  low: z.number().nullable(),
  high: z.number().nullable(),
  /** What passes where the controls miss the same pieces. */
  afterDependent: z.number().nullable(),
  piecesAYear: z.number().nullable(),
  calculation: z.string(),
})

export const hazardSchema = z.object({
  line: z.string(),
  contaminant: z.number().int(),
  label: z.string(),
  steps: z.array(z.string()),
  severity: z.object({ value: z.number().int(), words: z.string(), basis: z.string() }),
  likelihood: z.object({
    value: z.number().int(),
    words: z.string(),
    from: z.string(),
    /** What it was looked up from; empty where a person or the brief says it. */
    calculation: z.string(),
  }),
  significance: z.string(),
  afterControl: z.object({ likelihood: z.number().int(), significance: z.string() }).nullable(),
  entries: z.array(z.object({ step: z.string(), share: z.number().nullable(), programme: z.string() })),
  fragments: z.object({
    medianMm: z.number(),
    factor: z.number(),
    shapes: z.array(z.object({ name: z.string(), share: z.number(), perLength: z.number() })),
    confirmed: z.string(),
    moved: z.array(
      z.object({
        what: z.string(),
        meanChance: z.number(),
        arrive: z.number().nullable(),
        missed: z.array(z.object({ fromLengthMm: z.number(), perMillion: z.number().nullable() })),
      }),
    ),
  }),
  incidence: z.object({
    /** Pieces arriving per million packs; null where nothing is logged. */
    perMillion: z.number().nullable(),
    low: z.number().nullable(),
    high: z.number().nullable(),
    from: z.enum(['finds', 'brief', 'none']),
    /** Nothing was found: the figures are upper 95 % bounds. */
    isBound: z.boolean(),
    calculation: z.string(),
  }),
  controls: z.array(controlSchema),
  /** Sieves, magnets and the like ahead of the detectors, credited in turn with the middle of their range. */
  separators: z.array(
    z.object({
      point: z.string(),
      equipment: z.string(),
      label: z.string(),
      /** Share of all that arrives which it takes out in one run, worst and best. */
      takesOut: z.tuple([z.number(), z.number()]),
      /** What it never takes out, and on which condition the share stands. */
      neverRemoves: z.string(),
      condition: z.string(),
      calculation: z.string(),
    }),
  ),
  /** Where rework leaves and comes back in; null where the flow sends none back. */
  rework: z.object({ from: z.string(), to: z.string(), behind: z.boolean() }).nullable(),
  missesPerMillion: z.array(missesSchema),
  /** Pieces that customers reported. */
  complaints: z.number(),
  acceptableLevel: z.object({ text: z.string(), basis: z.string(), rule: z.string() }),
  /** That of the last control which sees it. */
  class: z.string(),
  /** Its number among the controls; null where none sees it. */
  decisive: z.number().int().nullable(),
  /** What no control here sees, with the programme that has to hold it; empty where everything is seen. */
  unseen: z.array(sentence),
  says: z.array(sentence),
})

export const registerSchema = z.object({
  hazards: z.array(hazardSchema),
  lines: z.array(
    z.object({
      name: z.string(),
      /** Machines taken to stand there; finds: contaminants of which they find any size. */
      controls: z.array(
        z.object({
          point: z.string(),
          equipment: z.string(),
          label: z.string(),
          finds: z.array(z.number().int()),
        }),
      ),
      unit: z.enum(['packs', 'kg']),
      perYear: z.number().nullable(),
    }),
  ),
  /** Who, when, which issue: as people said; empty where nobody did. */
  plant: z.array(z.object({ id: z.string(), label: z.string(), value: z.string(), rule: z.string() })),
  revalidate: z.array(sentence),
  law: z.array(sentence),
  /** Rules of law about machines that were compared and stand nowhere here: told in the advice, not in the register. */
  lawElsewhere: z.array(z.string()),
  auditor: z.array(z.object({ question: z.string(), answer: z.string(), rule: z.string() })),
  notes: z.array(sentence),
  /** Assumptions a person still has to confirm or change, by the name that answers use. */
  confirm: z.array(z.object({ id: z.string(), text: z.string(), value: z.string() })),
  /** What each rule that speaks here rests on. */
  cites: z.array(z.object({ rule: z.string(), sources: z.array(z.string()) })),
  /** Answers of the brief that overruled, with what was filled in. */
  overruled: z.array(
    z.object({ question: z.string(), filled: z.string(), answer: z.string(), because: z.string() }),
  ),
  /** Answers that could not be read, with what is allowed. */
  unread: z.array(z.object({ question: z.string(), message: z.string() })),
})

export type Sentence = z.infer<typeof sentence>
export const sentenceSchema = sentence
export type Register = z.infer<typeof registerSchema>
export type Hazard = z.infer<typeof hazardSchema>
export type HazardControl = z.infer<typeof controlSchema>
export type RegisterQuestion = z.infer<typeof questionSchema>
export type Misses = z.infer<typeof missesSchema>
