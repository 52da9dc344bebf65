/** Tables of the store; portable types only: JSON and times are text, so that SQLite and PostgreSQL hold the same. */
export interface Tables {
  kept: {
    id: string
    workspace: string
    kind: string
    title: string
    /** The latest revision, counted from 1. */
    revision: number
    createdAt: string
    changedAt: string
    /** 1 where it was taken away; its revisions stay. */
    gone: number
  }
  revision: {
    id: string
    revision: number
    at: string
    /** Who kept it; empty where nobody signs in. */
    by: string
    /** What was done: kept, restored from another revision, brought in, taken away. */
    done: string
    title: string
    /** Versions of program, rules and reference it was kept under, as JSON. */
    versions: string
    body: string
  }
  person: {
    name: string
    workspace: string
    role: string
    /** Salted scrypt of the password with its parameters; empty where a proxy signs the person in. */
    secret: string
    /** 1 where the person was taken away; the name stays, so that the trail means one person. */
    gone: number
  }
  sitting: {
    /** SHA-256 of what the browser holds. */
    id: string
    name: string
    /** ms since 1970. */
    begunMs: number
    seenMs: number
  }
  /** Sign-ins that failed, by the name that was given. */
  attempt: { name: string; failures: number; sinceMs: number }
  /** What was done that is no revision of a thing. */
  event: { id: string; workspace: string; at: string; who: string; what: string }
  /** A table of products that several programs work on: heading and sizes of its lines as JSON. */
  table: { id: string; frame: string; largest: string; rows: number; batches: number; atMs: number }
  /** Rows of it, and what came of them, as JSON; null until somebody has worked them out. */
  batch: { id: string; number: number; rows: string; worked: string | null }
  setting: { name: string; value: string }
}
