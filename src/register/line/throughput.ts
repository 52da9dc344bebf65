import type { Brief } from '../../contract/index.ts'
import type { Answers } from './answers.ts'

/** Days of production a year where nobody says (assumption: five days a week, fifty weeks). */
export const USUAL_DAYS = 250

/** What a line makes: packs where there are packs, else kilograms, so that "per million" keeps one meaning. */
export interface Throughput {
  readonly unit: 'packs' | 'kg'
  readonly perMin: number
  readonly perDay: number
  readonly perYear: number
  readonly massG: number | null
  readonly hoursPerDay: number
}

/** Throughput of a line, from its last point that says one; null where none does. */
export function throughputOf(brief: Brief, points: readonly number[], answers: Answers): Throughput | null {
  const days = answers.number('plant.days', USUAL_DAYS, '', [1, 366]).value
  const rates = points.map((i) => brief.points[i]!)
  const packed = rates.findLast(({ packsPerMin }) => packsPerMin !== null)
  const weighed = rates.findLast(({ kgPerHour }) => kgPerHour !== null)
  const at = packed ?? weighed
  if (!at) return null
  const perMin = packed ? packed.packsPerMin! : weighed!.kgPerHour! / 60
  const perDay = perMin * 60 * at.hoursPerDay
  return {
    unit: packed ? 'packs' : 'kg',
    perMin,
    perDay,
    perYear: perDay * days,
    massG: packed ? packed.massG : 1000,
    hoursPerDay: at.hoursPerDay,
  }
}
