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
}
