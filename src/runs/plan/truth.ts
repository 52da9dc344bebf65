import { linkInverse, linkValue } from '../fit/link.ts'

/** What a machine would do, for planning: a logit in ln size through the predicted 50 % and 90 % sizes. */
export interface Truth {
  readonly b0: number
  readonly b1: number
}

/** `worseBy` 0.1: every size 10 % larger than predicted. */
export function truthOf(a50: number, a90: number, worseBy = 0): Truth {
  const b1 = linkInverse('logit', 0.9) / Math.log(a90 / a50)
  return { b0: -b1 * Math.log(a50 * (1 + worseBy)), b1 }
}

export const chanceAt = ({ b0, b1 }: Truth, sizeMm: number): number =>
  linkValue('logit', b0 + b1 * Math.log(sizeMm)).found

export const sizeOfChance = ({ b0, b1 }: Truth, chance: number): number =>
  Math.exp((linkInverse('logit', chance) - b0) / b1)
