import { z } from 'zod'
import { briefSchema, runRowSchema, type Versions, versionsSchema } from '../contract/index.ts'
import { text } from '../contract/quantity.ts'

/** Day of a report, in words, at every door. */
export const reportDateSchema = text('day of the report', 40).min(1, {
  error: 'day of the report must say a day',
})

/** Whether the short form is asked for, as an address says it. */
export const reportShortSchema = z
  .enum(['0', '1'], { error: 'short must be 1 for the short form or 0 for the whole report' })
  .transform((short) => short === '1')

/** What a report keeps so that it can be made again: the same brief, day and form under the same versions. */
export const reportDataSchema = z
  .strictObject({
    report: z.literal(1),
    date: reportDateSchema,
    short: z.boolean(),
    versions: versionsSchema,
    changes: z.array(z.string()).nullable(),
    /** Rows of a trial held against the brief, where one was given. */
    trial: z
      .strictObject({ rows: z.array(runRowSchema).max(100_000), machine: z.string().max(60).nullable() })
      .optional(),
    /** As it was entered: where it names no contaminants, none are kept, so that they are assumed again. */
    brief: briefSchema.transform(({ contaminants, ...rest }) =>
      contaminants.length > 0 ? { ...rest, contaminants } : rest,
    ),
  })
  .meta({ id: 'ReportData', description: 'What makes a report again under the same versions' })

export type ReportData = z.infer<typeof reportDataSchema>

/** True where a JSON value is meant as a report's data rather than a brief. */
export const isReportData = (value: unknown): value is { readonly brief: unknown } =>
  typeof value === 'object' && value !== null && 'report' in value && 'brief' in value

/** Versions that differ between what made a report and what would make it now, in words; empty where none does. */
export function otherVersions(kept: Versions, now: Versions): string[] {
  const names = { gritwise: 'gritwise', rules: 'rule book', reference: 'reference data' } as const
  return (Object.keys(names) as (keyof Versions)[])
    .filter((key) => kept[key] !== now[key])
    .map((key) => `${names[key]} ${kept[key]} then, ${now[key]} now`)
}
