import { readMeasure } from '../brief/form/measure.ts'
import { parseBrief } from '../brief/index.ts'
import type { Brief, Problem } from '../contract/index.ts'

/** What the contract allows of false rejects per pack. */
const LEAST = 1e-7
const MOST = 0.2

export type AskedRate =
  | { readonly rate: number | null; readonly problem: null }
  | { readonly rate: null; readonly problem: Problem }

/** The one rate of false rejects that sizes, cost and clause are to hold at; null where each brief keeps its own. */
export function readRate(typed: string): AskedRate {
  if (typed.trim() === '') return { rate: null, problem: null }
  const reading = readMeasure(typed, '')
  if (reading.ok && reading.value >= LEAST && reading.value <= MOST)
    return { rate: reading.value, problem: null }
  const message = reading.ok
    ? `False rejects: give a share from 1 in 10,000,000 to 1 in 5; ${typed.trim()} was given`
    : `False rejects: ${reading.because}`
  return { rate: null, problem: { path: 'rejects', message } }
}

/** The brief with that rate at every point; the brief itself where it is so already. */
export function atRate(brief: Brief, rate: number | null): Brief {
  if (rate === null || brief.points.every(({ falseRejectsPerPack }) => falseRejectsPerPack === rate))
    return brief
  const { given } = brief
  const parsed = parseBrief({
    ...given,
    points: given.points.map((point) => ({ ...point, falseRejectsPerPack: rate })),
  })
  if (!parsed.ok)
    throw new RangeError(`a rate of ${rate} leaves no brief: ${JSON.stringify(parsed.problems)}`)
  return parsed.brief
}

/** The rate all sides hold at; null where their points keep different ones. */
export function commonRate(points: readonly { readonly falseRejectsPerPack: number }[]): number | null {
  const [first] = points
  if (!first) return null
  return points.every((one) => one.falseRejectsPerPack === first.falseRejectsPerPack)
    ? first.falseRejectsPerPack
    : null
}
