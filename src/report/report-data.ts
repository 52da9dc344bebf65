import { z } from 'zod'
import { briefSchema, runRowSchema, type Versions, versionsSchema } from '../contract/index.ts'

/** What a report keeps so that it can be made again: the same brief, day and form under the same versions. */
export const reportDataSchema = z.strictObject({
  report: z.literal(1),
  date: z.string().min(1).max(40),
  short: z.boolean(),
  versions: versionsSchema,
  changes: z.array(z.string()).nullable(),
  /** Rows of a trial held against the brief, where one was given. */
  trial: z
    .strictObject({ rows: z.array(runRowSchema).max(100_000), machine: z.string().max(60).nullable() })
    .optional(),
  brief: briefSchema,
})

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
