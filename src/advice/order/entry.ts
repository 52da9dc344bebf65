import type { Brief } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase()

const BESIDE = /^(?:.*\s)?(before|after|behind)\s+(?:the\s+)?(.+)$/i

/**
 * Place of an inspection point among the steps of the flow: at the step of its name, or half a step before or
 * behind it where the point is named so ("after packing"); null where no step fits.
 */
function stepOfPoint(brief: Brief, pointIndex: number): number | null {
  const flow = brief.given.flow ?? []
  const stepNamed = (name: string) => flow.findIndex(({ step }) => same(step.replace(/^the\s+/i, ''), name))
  const { name } = brief.points[pointIndex]!
  const at = stepNamed(name)
  if (at >= 0) return at
  const [, side, beside = ''] = BESIDE.exec(name.trim()) ?? []
  const next = beside === '' ? -1 : stepNamed(beside)
  if (next < 0) return null
  return side?.toLowerCase() === 'before' ? next - 0.5 : next + 0.5
}

/** Whether words of a step mean a material: its id, its name, or its kind ("metal", "glass"). */
function means(what: string, material: string): boolean {
  const listed = materials.get(material)
  return [material, listed?.label, listed?.kind].some((word) => word !== undefined && same(what, word))
}

/** The last step at which a contaminant can enter; null where the brief does not say. */
function stepOfEntry(brief: Brief, contaminant: number): number | null {
  const { material, entersAt } = brief.contaminants[contaminant]!
  const flow = brief.given.flow ?? []
  const steps = flow.flatMap(({ step, entersHere }, at) =>
    (entersAt !== '' && same(step, entersAt)) || entersHere?.some((what) => means(what, material))
      ? [at]
      : [],
  )
  return steps.at(-1) ?? null
}

/** True where a contaminant can still enter behind a point; null where the brief does not say. */
export function entersBehind(brief: Brief, contaminant: number, pointIndex: number): boolean | null {
  const entry = stepOfEntry(brief, contaminant)
  const point = stepOfPoint(brief, pointIndex)
  return entry === null || point === null ? null : entry > point
}
