import type { Machine } from '../../contract/index.ts'

/** What a metal detector takes beside an x-ray machine (measured, order of magnitude). */
const COIL_SHARE = 0.2

/** Work of assessing a machine for so many contaminants; one x-ray machine and one contaminant is 1. */
export const workOf = (family: Machine['family'], contaminants: number): number =>
  contaminants * (family === 'xray' ? 1 : COIL_SHARE)

/** An allowance of work, so that a search ends after the same trials on every machine, whatever its speed. */
export class Allowance {
  #left: number
  #refused = false

  constructor(work: number) {
    this.#left = work
  }

  /** Takes the work off; false, and nothing taken, where it is more than is left. */
  take(work: number): boolean {
    if (work > this.#left) {
      this.#refused = true
      return false
    }
    this.#left -= work
    return true
  }

  /** True once something was refused. */
  get ranOut(): boolean {
    return this.#refused
  }
}
