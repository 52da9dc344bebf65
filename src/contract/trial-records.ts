import { z } from 'zod'
import { quantity, text } from './quantity.ts'

/** What trials on the product add to a brief: machines measured, sizes shown. */

const whole = (label: string, min: number, max: number) =>
  quantity(label, '', min, max).int({ error: `${label} must be a whole number from ${min} to ${max}` })

const where = {
  point: text('inspection point of the trial', 80).min(1, {
    error: 'name the inspection point of the trial',
  }),
  equipment: text('machine of the trial', 60).min(1, { error: 'name the machine of the trial' }),
  contaminant: whole('number of the contaminant, counted from 0', 0, 39),
  setting: text('setting of the trial', 60).optional(),
  serial: text('plate number of the machine', 60).optional(),
  date: text('day of the trial', 40).optional(),
  /** What it ran on: the record lapses when any of it changes. Without it the record holds as it stands. */
  ranOn: text('what the trial ran on', 4000).optional(),
}

/**
 * A machine measured in this product. With a contaminant and constants: what a trial with one piece made of the
 * predicted curve; it speaks of no other piece, food, thickness or setting. Without them: a clean run alone, whose
 * rejects say where the machine's threshold stands for all pieces.
 */
export const measuredSchema = z.strictObject({
  ...where,
  contaminant: where.contaminant.optional(),
  cleanRun: z
    .strictObject({
      packs: whole('clean packs', 0, 1e6),
      rejects: whole('clean packs rejected', 0, 1e6),
    })
    .optional(),
  productSignal: quantity('largest signal of a clean pack', '', 0, 1e12).optional(),
  /** Size of this piece whose signal is as large: what the machine leaves of the food, whatever its own scale. */
  productSignalMm: quantity('size of the piece with that signal', 'mm', 0.05, 50).optional(),
  constants: z
    .strictObject({
      /** Every predicted size times this. */
      sizeFactor: quantity('factor on the predicted sizes', '', 0.1, 10),
      /** Standard deviation of the ln of the 90 % size after the trial. */
      sizeSpread: quantity('spread of the 90 % size', '', 0, 2),
      /** The predicted curve rises this many times as steeply. */
      steepness: quantity('factor on the steepness', '', 0.1, 10),
    })
    .optional(),
})

/** A size that a trial showed to be found 9 times in 10 with 95 % confidence. */
export const demonstratedRecordSchema = z.strictObject({
  ...where,
  sizeMm: quantity('size shown', 'mm', 0.05, 50),
  basis: z.enum(['curve', 'exact'], { error: 'basis must be one of curve, exact' }),
  packs: whole('packs of the trial', 1, 1e6),
  position: text('place of the pieces', 80).optional(),
})

export type MeasuredRow = z.infer<typeof measuredSchema>
/** A row of a brief that speaks of one piece. */
export type Measured = MeasuredRow & {
  readonly contaminant: number
  readonly constants: NonNullable<MeasuredRow['constants']>
}
/** A row that speaks of the machine alone. */
export type CleanRunRow = MeasuredRow & { readonly cleanRun: NonNullable<MeasuredRow['cleanRun']> }

export const speaksOfPiece = (row: MeasuredRow): row is Measured =>
  row.contaminant !== undefined && row.constants !== undefined
export const speaksOfMachine = (row: MeasuredRow): row is CleanRunRow =>
  row.contaminant === undefined && row.cleanRun !== undefined
/** A trial that no longer counts, with what has changed since. */
export interface Lapsed {
  readonly pointIndex: number
  readonly equipment: string
  readonly contaminant: number
  readonly date: string | null
  readonly changed: readonly string[]
}
export type DemonstratedRecord = z.infer<typeof demonstratedRecordSchema>
