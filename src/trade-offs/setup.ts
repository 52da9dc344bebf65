import type { Machine, Point } from '../contract/index.ts'

/** A machine at a point: what an input reads its value from and what it changes. */
export interface Setup {
  readonly point: Point
  readonly machine: Machine
}
