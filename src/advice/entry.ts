import type { Brief } from '../contract/index.ts'

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase()

/** Place of an inspection point among the steps of the flow, by its name; null where no step has it. */
function stepOfPoint(brief: Brief, pointIndex: number): number | null {
  const at = (brief.given.flow ?? []).findIndex(({ step }) => same(step, brief.points[pointIndex]!.name))
  return at < 0 ? null : at
}

/** The last step at which a contaminant can enter; null where the brief does not say. */
function stepOfEntry(brief: Brief, contaminant: number): number | null {
  const { material, entersAt } = brief.contaminants[contaminant]!
  const flow = brief.given.flow ?? []
  const steps = flow.flatMap(({ step, entersHere }, at) =>
    (entersAt !== '' && same(step, entersAt)) || entersHere?.some((what) => same(what, material)) ? [at] : [],
  )
  return steps.at(-1) ?? null
}

/** True where a contaminant can still enter behind a point; null where the brief does not say. */
export function entersBehind(brief: Brief, contaminant: number, pointIndex: number): boolean | null {
  const entry = stepOfEntry(brief, contaminant)
  const point = stepOfPoint(brief, pointIndex)
  return entry === null || point === null ? null : entry > point
}
