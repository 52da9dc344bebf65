import { z } from 'zod'
import {
  answerSchema,
  type Confirmed,
  confirmedSchema,
  type Entry,
  entrySchema,
  type Find,
  findSchema,
  type GivenAnswer,
  type Reject,
  rejectSchema,
} from './line-records.ts'
import { machineSchema } from './machine.ts'
import { oneOf, quantity, text, yesNo } from './quantity.ts'
import {
  type CleanRunRow,
  type DemonstratedRecord,
  demonstratedRecordSchema,
  type Lapsed,
  type Measured,
  measuredSchema,
} from './trial-records.ts'

/** Machines of one brief, ids and quoted ones together. */
export const MOST_MACHINES = 30

/** UK: Great Britain and Northern Ireland, whose food law differs; GB and NI: one of the two. */
export const MARKETS = ['US', 'EU', 'UK', 'GB', 'NI', 'other'] as const
export const CONSUMERS = ['general', 'infants', 'elderly-or-patients', 'animals'] as const
export const STRUCTURES = [
  'solid',
  'granular',
  'powder',
  'liquid',
  'pieces-in-liquid',
  'inclusions',
  'plates',
] as const
export const STAGES = ['loose', 'pumped', 'free-fall', 'packed'] as const
/** Which part of food law speaks of a product where the list of foods cannot tell (US inspection divides by it). */
export const FOOD_CLASSES = ['meat-or-poultry', 'fish', 'juice', 'other'] as const
export const OUTLINES = ['box', 'cylinder'] as const
export const PLACES = ['base', 'lid', 'closure', 'tray', 'wrap', 'sleeve', 'wall'] as const
export const SHAPES = ['sphere', 'wire', 'flake'] as const
export const PLACEMENTS = ['inside', 'outside'] as const
/** Kinds of a contaminant that a person describes; a metal would need electrical constants besides. */
export const CONTAMINANT_KINDS = ['glass', 'stone', 'bone', 'polymer', 'organic'] as const
export const BASES = ['injury', 'law', 'customer', 'best-achievable'] as const

export const compositionSchema = z.strictObject({
  waterPct: quantity('water', '%', 0, 100),
  proteinPct: quantity('protein', '%', 0, 100),
  fatPct: quantity('fat', '%', 0, 100),
  carbohydratePct: quantity('carbohydrate', '%', 0, 100),
  ashPct: quantity('ash', '%', 0, 100),
})

const productFields = {
  food: text('food', 60).min(1, { error: 'name the food, or "custom" with its composition' }),
  composition: compositionSchema.optional(),
  densityGPerCm3: quantity('density of the solid food', 'g/cm³', 0.02, 5).optional(),
  structure: oneOf('structure', STRUCTURES).optional(),
  grainMm: quantity('grain size', 'mm', 0.01, 200).optional(),
  packing: quantity('fill fraction', '', 0.05, 1).optional(),
  unevennessMm: quantity('unevenness', 'mm', 0, 20).optional(),
  voidFree: yesNo('void-free').optional(),
  stiff: yesNo('stiff').optional(),
  temperatureC: quantity('temperature', '°C', -60, 150).optional(),
  saltPct: quantity('salt', '%', 0, 40).optional(),
  ironMgPerKg: quantity('added iron', 'mg/kg', 0, 100000).optional(),
  conductivitySPerM: quantity('conductivity', 'S/m', 0, 20).optional(),
  boneIn: yesNo('bone left in the food').optional(),
}

export const productSchema = z.strictObject({
  ...productFields,
  foodClass: oneOf('class of the food', FOOD_CLASSES).optional(),
})
export const productAtPointSchema = z.strictObject({ ...productFields, food: productFields.food.optional() })

export const partSchema = z.strictObject({
  material: text('packaging material', 60),
  mm: quantity('thickness of one layer', 'mm', 0, 100),
  place: oneOf('place', PLACES),
  unevennessMm: quantity('unevenness of the part', 'mm', 0, 10).optional(),
  sheetOhmPerSquare: quantity('sheet resistance', 'Ω per square', 1e-6, 1e6).optional(),
})

export const flowStepSchema = z.strictObject({
  step: text('step'),
  entersHere: z.array(text('what enters here', 60)).max(40).optional(),
  upstreamControl: text('upstream control').optional(),
  rework: yesNo('rework').optional(),
})

/** What a metal detector leaves of this food's signal once it has learned it, read on the line with clean packs. */
export const productSignalSchema = z.strictObject({
  amplitudePct: quantity('what is left of the food’s signal', '%', 0.01, 50),
  phaseDeg: quantity('how far the phase of the food wanders', '°', 0.01, 45),
  readOn: text('machine and day of the reading', 80).optional(),
})

export const pointSchema = z.strictObject({
  name: text('name of the inspection point', 80).optional(),
  stage: oneOf('stage', STAGES).optional(),
  heightMm: quantity('height', 'mm', 1, 2000).optional(),
  filledMm: quantity('height the food fills', 'mm', 1, 2000).optional(),
  widthMm: quantity('width', 'mm', 1, 3000).optional(),
  lengthMm: quantity('length', 'mm', 1, 5000).optional(),
  massG: quantity('mass', 'g', 0.1, 100000).optional(),
  outline: oneOf('outline', OUTLINES).optional(),
  parts: z.array(partSchema).max(20).optional(),
  inserts: z.array(text('insert', 60)).max(20).optional(),
  speedMPerMin: quantity('speed', 'm/min', 0.1, 600).optional(),
  packsPerMin: quantity('packs per minute', 'per minute', 0.01, 5000).optional(),
  kgPerHour: quantity('throughput', 'kg/h', 0.1, 500000).optional(),
  lanes: quantity('lanes', '', 1, 20).int({ error: 'lanes must be a whole number from 1 to 20' }).optional(),
  hoursPerDay: quantity('hours per day', 'h', 0.1, 24).optional(),
  falseRejectsPerPack: quantity('false rejects per pack', '', 1e-7, 0.2).optional(),
  checkIntervalMin: quantity('check interval', 'min', 1, 10080).optional(),
  reactMin: quantity('time to react', 'min', 0, 1440).optional(),
  apertureHeightMm: quantity('opening height', 'mm', 20, 2000).optional(),
  apertureWidthMm: quantity('opening width', 'mm', 20, 4000).optional(),
  largestHeightMm: quantity('height of the largest pack', 'mm', 1, 2000).optional(),
  largestWidthMm: quantity('width of the largest pack', 'mm', 1, 3000).optional(),
  fallHeightMm: quantity('fall height', 'mm', 10, 10000).optional(),
  pipeDiameterMm: quantity('pipe diameter', 'mm', 5, 500).optional(),
  line: text('line', 80).optional(),
  afterStep: text('step it stands behind', 200).optional(),
  reject: rejectSchema.optional(),
  productSignal: productSignalSchema.optional(),
  product: productAtPointSchema.optional(),
})

export const contaminantSchema = z.strictObject({
  material: text('contaminant material', 60).min(1, {
    error: 'name the contaminant material, or "custom" with its kind, density and elements',
  }),
  ownName: text('name of your material', 60).optional(),
  kind: oneOf('kind of your material', CONTAMINANT_KINDS).optional(),
  densityGPerCm3: quantity('density of your material', 'g/cm³', 0.05, 25).optional(),
  elements: text('elements of your material', 200).optional(),
  shape: oneOf('shape', SHAPES).optional(),
  lengthMm: quantity('wire length', 'mm', 0.1, 1000).optional(),
  faceMm2: quantity('flake face', 'mm²', 0.01, 100000).optional(),
  placement: oneOf('placement', PLACEMENTS).optional(),
  mustFindMm: quantity('size you must find', 'mm', 0.05, 50).optional(),
  basis: oneOf('basis', BASES).optional(),
  severity: quantity('severity', '', 1, 5)
    .int({ error: 'severity must be a whole number from 1 to 5' })
    .optional(),
  likelihood: quantity('likelihood', '', 1, 5)
    .int({ error: 'likelihood must be a whole number from 1 to 5' })
    .optional(),
  foundPerMillionPacks: quantity('found per million packs', '', 0, 1e6).optional(),
  entersAt: text('where it enters').optional(),
  entries: z.array(entrySchema).max(20).optional(),
})

export const quoteSchema = z.strictObject({
  equipment: text('equipment quoted', 60),
  material: text('material', 60),
  shape: oneOf('shape', SHAPES).optional(),
  lengthMm: quantity('wire length', 'mm', 0.1, 1000).optional(),
  faceMm2: quantity('flake face', 'mm²', 0.01, 100000).optional(),
  sizeMm: quantity('quoted size', 'mm', 0.01, 50),
  obtained: oneOf('how the quote was obtained', ['in-product', 'empty', 'unknown']).optional(),
  position: text('position').optional(),
  runs: quantity('runs', '', 0, 100000).optional(),
  falseRejectsPerPack: quantity('false rejects per pack', '', 0, 1).optional(),
})

/** The brief as a person or a program gives it: everything optional that has a default. */
export const briefSchema = z
  .strictObject({
    title: text('title').optional(),
    market: oneOf('market', MARKETS).optional(),
    consumer: oneOf('consumer', CONSUMERS).optional(),
    readyToEat: yesNo('ready to eat').optional(),
    labelClaims: z.array(text('label claim', 60)).max(20).optional(),
    product: productSchema,
    flow: z.array(flowStepSchema).max(60).optional(),
    points: z
      .array(pointSchema)
      .min(1, { error: 'a brief needs at least one inspection point; none was given' })
      .max(12, { error: 'a brief takes at most 12 inspection points' }),
    contaminants: z
      .array(contaminantSchema)
      .min(1, {
        error: 'name at least one contaminant, or leave the list out: the usual ones are then assumed',
      })
      .max(40, { error: 'a brief takes at most 40 contaminants' })
      // Left out: filled when the brief is read, by its food.
      .default(() => []),
    quotes: z.array(quoteSchema).max(40).optional(),
    equipment: z
      .array(z.union([text('equipment', 60), machineSchema]))
      .max(MOST_MACHINES)
      .optional(),
    finds: z.array(findSchema).max(200).optional(),
    answers: z.array(answerSchema).max(400).optional(),
    confirmed: z.array(confirmedSchema).max(200).optional(),
    measured: z.array(measuredSchema).max(60).optional(),
    demonstrated: z.array(demonstratedRecordSchema).max(200).optional(),
  })
  .meta({ id: 'Brief', description: 'Product, inspection points and contaminants of a food line' })

export type BriefInput = z.infer<typeof briefSchema>
export type ProductInput = z.infer<typeof productSchema>
export type PointInput = z.infer<typeof pointSchema>
export type ContaminantInput = z.infer<typeof contaminantSchema>
export type ProductSignal = z.infer<typeof productSignalSchema>
export type Part = z.infer<typeof partSchema>
export type Quote = z.infer<typeof quoteSchema>
export type Structure = (typeof STRUCTURES)[number]
export type Place = (typeof PLACES)[number]
export type Stage = (typeof STAGES)[number]
export type Shape = (typeof SHAPES)[number]
export type Placement = (typeof PLACEMENTS)[number]

/** One thing wrong with a brief: where (as the person sees it), and what is allowed. */
export interface Problem {
  readonly path: string
  readonly message: string
}

/** A value that was not given and was filled in: what, from where, and how far it may be off. */
export interface Assumption {
  readonly path: string
  readonly label: string
  readonly value: number | string | boolean
  readonly range: readonly [number, number] | null
  readonly because: string
}

export interface Product {
  readonly food: string
  readonly composition: z.infer<typeof compositionSchema> | null
  readonly densityGPerCm3: number
  readonly structure: Structure
  readonly grainMm: number
  readonly packing: number
  readonly unevennessMm: number
  readonly voidFree: boolean
  /** A liquid in which a piece stays where it fell; false for food that is no liquid. */
  readonly stiff: boolean
  readonly temperatureC: number
  readonly saltPct: number | null
  readonly ironMgPerKg: number
  readonly conductivitySPerM: number | null
  /** Bone belongs in the food here: a joint, a wing, a chop, a whole bird or fish. */
  readonly boneIn: boolean
}

export interface Point {
  readonly name: string
  readonly stage: Stage
  /** Inside of the pack. */
  readonly heightMm: number
  /** Height the food fills: what beam and field cross. */
  readonly filledMm: number
  readonly widthMm: number
  readonly lengthMm: number
  readonly massG: number | null
  readonly outline: (typeof OUTLINES)[number]
  readonly parts: readonly Part[]
  readonly inserts: readonly string[]
  readonly speedMPerMin: number
  readonly packsPerMin: number | null
  readonly kgPerHour: number | null
  readonly lanes: number
  readonly hoursPerDay: number
  readonly falseRejectsPerPack: number
  readonly checkIntervalMin: number | null
  readonly reactMin: number | null
  readonly apertureHeightMm: number | null
  readonly apertureWidthMm: number | null
  /** The largest pack through the same machine, lanes side by side together; null where none is larger than this. */
  readonly largestHeightMm: number | null
  readonly largestWidthMm: number | null
  readonly fallHeightMm: number | null
  readonly pipeDiameterMm: number | null
  /** Name of the line it stands on; empty where none was given. */
  readonly line: string
  readonly afterStep: string
  readonly reject: Reject | null
  /** Residual of the food at a metal detector, read on the line; null: assumed. */
  readonly productSignal: ProductSignal | null
  /** The product as it is at this point: the brief's, with this point's differences laid over it. */
  readonly product: Product
}

export interface Contaminant {
  readonly material: string
  readonly shape: Shape
  readonly lengthMm: number | null
  readonly faceMm2: number | null
  readonly placement: Placement
  readonly mustFindMm: number | null
  readonly basis: (typeof BASES)[number]
  readonly severity: number
  readonly likelihood: number
  readonly foundPerMillionPacks: number | null
  readonly entersAt: string
  readonly entries: readonly Entry[]
}

/** The brief with every value filled in; `given` keeps what was entered, `assumed` says what was not. */
export interface Brief {
  readonly given: BriefInput
  readonly title: string
  readonly market: (typeof MARKETS)[number]
  readonly consumer: (typeof CONSUMERS)[number]
  readonly readyToEat: boolean
  readonly labelClaims: readonly string[]
  readonly points: readonly Point[]
  readonly contaminants: readonly Contaminant[]
  readonly quotes: readonly Quote[]
  readonly equipment: readonly (string | z.infer<typeof machineSchema>)[]
  readonly finds: readonly Find[]
  readonly answers: readonly GivenAnswer[]
  readonly confirmed: readonly Confirmed[]
  readonly measured: readonly Measured[]
  /** Clean runs of whole machines, not of one piece. */
  readonly cleanRuns: readonly CleanRunRow[]
  readonly demonstrated: readonly DemonstratedRecord[]
  /** Trials that no longer count: what they ran on has changed. */
  readonly lapsed: readonly Lapsed[]
  readonly assumed: readonly Assumption[]
}
