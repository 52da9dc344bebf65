import { z } from 'zod'
import { versionsSchema } from '../contract/index.ts'

/** What can be kept. A register's answers with their reasons and the finds log are part of their brief. */
export const KINDS = ['brief', 'advice', 'runs', 'own'] as const
export type Kind = (typeof KINDS)[number]

/** One thing as lists show it. */
export interface KeptThing {
  readonly id: string
  readonly kind: Kind
  readonly title: string
  readonly revision: number
  readonly createdAt: string
  readonly changedAt: string
}

/** One revision; its body null where what the database holds can no longer be read. */
export interface Revision {
  readonly revision: number
  readonly at: string
  readonly by: string
  readonly done: string
  readonly title: string
  readonly versions: z.infer<typeof versionsSchema> | null
  readonly body: unknown
  readonly unreadable: boolean
}

/** What is to be kept. */
export interface ToKeep {
  readonly kind: Kind
  readonly title: string
  readonly body: unknown
  readonly by: string
  readonly versions?: Revision['versions']
}

/** Kept, or somebody else has kept a newer revision since: then both are there to be compared. */
export type Saved =
  | { readonly ok: true; readonly id: string; readonly revision: number }
  | { readonly ok: false; readonly theirs: Revision }

const revisionSchema = z.object({
  revision: z.number().int().min(1),
  at: z.string().max(40),
  by: z.string().max(200),
  done: z.string().max(200),
  title: z.string().max(200),
  versions: versionsSchema.nullable(),
  body: z.unknown(),
})

/** Everything that is kept, as one file. */
export const exportSchema = z.object({
  gritwiseKept: z.literal(1),
  at: z.string(),
  things: z.array(
    z.object({
      id: z.string().regex(/^[\w-]{8,40}$/),
      kind: z.enum(KINDS),
      title: z.string().max(200),
      createdAt: z.string().max(40),
      revisions: z.array(revisionSchema).min(1),
    }),
  ),
})
export type Exported = z.infer<typeof exportSchema>
