import type { Brief } from '../contract/index.ts'
import { materials } from '../reference/index.ts'

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase()

/** A name without its article. */
const bare = (name: string) => name.trim().replace(/^the\s+/i, '')

const BESIDE = /^(?:.*\s)?(before|after|behind)\s+(?:the\s+)?(.+)$/i

/**
 * Place of an inspection point among the steps of the flow: half a step behind the one it is said to stand behind,
 * at the step of its name, or half a step before or behind it where the point is named so ("after packing"); null
 * where no step fits.
 */
export function stepOfPoint(brief: Brief, pointIndex: number): number | null {
  const flow = brief.given.flow ?? []
  const stepNamed = (name: string) => flow.findIndex(({ step }) => same(bare(step), bare(name)))
  const { name, afterStep } = brief.points[pointIndex]!
  const stoodBehind = afterStep === '' ? -1 : stepNamed(afterStep)
  if (stoodBehind >= 0) return stoodBehind + 0.5
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

/** A way in of a contaminant: the step by name and place in the flow, and the share of its pieces, where said. */
export interface WayIn {
  readonly step: string
  readonly at: number
  readonly share: number | null
}

/** Every step at which a contaminant enters, in the order of the flow; empty where the brief does not say. */
export function waysIn(brief: Brief, contaminant: number): readonly WayIn[] {
  const { material, entersAt, entries } = brief.contaminants[contaminant]!
  const flow = brief.given.flow ?? []
  return flow.flatMap(({ step, entersHere }, at) => {
    const entry = entries.find((one) => same(one.step, step))
    if (entry) return [{ step, at, share: entry.share ?? null }]
    if (entries.length > 0) return []
    const enters =
      (entersAt !== '' && same(step, entersAt)) || entersHere?.some((what) => means(what, material))
    return enters ? [{ step, at, share: null }] : []
  })
}

/** The last step at which a contaminant can enter; null where the brief does not say. */
const stepOfEntry = (brief: Brief, contaminant: number): number | null =>
  waysIn(brief, contaminant).at(-1)?.at ?? null

/**
 * True where a contaminant is the glass of a container that the food meets only behind this point: it comes with the
 * empty jar, so no machine before filling can see it, whatever the flow says or leaves out.
 */
function comesWithThePack(brief: Brief, contaminant: number, pointIndex: number): boolean {
  const { material } = brief.contaminants[contaminant]!
  const here = brief.points[pointIndex]!
  if (here.stage === 'packed' || materials.get(material)?.kind !== 'glass') return false
  const onItsLine = (line: string) => line === here.line || line === '' || here.line === ''
  return brief.points
    .slice(pointIndex + 1)
    .some(
      ({ stage, line, parts }) =>
        stage === 'packed' && onItsLine(line) && parts.some((part) => part.material === material),
    )
}

/** True where a contaminant can still enter behind a point; null where the brief does not say. */
export function entersBehind(brief: Brief, contaminant: number, pointIndex: number): boolean | null {
  const entry = stepOfEntry(brief, contaminant)
  const point = stepOfPoint(brief, pointIndex)
  if (entry !== null && point !== null) return entry > point
  return comesWithThePack(brief, contaminant, pointIndex) ? true : null
}
