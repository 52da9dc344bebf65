import type { Advice, Brief, Finding, Option } from '../../contract/index.ts'
import type { Answers } from './answers.ts'
import { type Separator, separatorsAt } from './separators.ts'

/** A machine that stands at a point of a line, as the register takes it. */
export interface InPlace {
  readonly pointIndex: number
  readonly point: string
  readonly option: Option
}

/** Points of one line in series, with the machines taken to stand there. */
export interface Line {
  readonly name: string
  readonly points: readonly number[]
  readonly controls: readonly InPlace[]
  /** Sieves, magnets and the like ahead of the detectors. */
  readonly separators: readonly Separator[]
}

type Taken = Pick<Advice, 'points' | 'combination'>

/** A point's line; one line without a name where the brief names none. */
const lineName = (brief: Brief, point: number): string =>
  (brief.points[point] as { readonly line?: string | null }).line ?? ''

/** The brief's lines in the order of their first points. */
export function linesOf(brief: Brief, advice: Taken, answers: Answers): Line[] {
  const names = [...new Set(brief.points.map((_, i) => lineName(brief, i)))]
  return names.map((name) => {
    const points = brief.points.flatMap((_, i) => (lineName(brief, i) === name ? [i] : []))
    return {
      name,
      points,
      controls: points.flatMap((i) => inPlaceAt(brief, advice, i, answers)),
      separators: points.flatMap((i) => separatorsAt(brief, advice, i, answers)),
    }
  })
}

/**
 * The machine at a point: the one a person names, the one the recommendation uses there, or, where the brief itself
 * lists the machines of the plant, the first of them that finds anything here. "none" takes it away.
 */
function inPlaceAt(brief: Brief, advice: Taken, pointIndex: number, answers: Answers): InPlace[] {
  const there = advice.points[pointIndex]
  if (!there) return []
  const used = advice.combination.uses.find(({ point }) => point === there.name)?.equipment
  const listed = brief.equipment.length > 0 ? there.options.find(findsSomething)?.equipment : undefined
  const known = there.options.map(({ equipment }) => equipment)
  const chosen = answers.word(`p${pointIndex}.machine`, used ?? listed ?? 'none', [...known, 'none']).value
  const option = there.options.find(({ equipment }) => equipment === chosen)
  return option ? [{ pointIndex, point: there.name, option }] : []
}

const findsSomething = ({ findings, verdict }: Option): boolean =>
  verdict !== 'not-suitable' && findings.some(({ expectedMm }) => expectedMm !== null)

export const findingOf = ({ option }: InPlace, contaminant: number): Finding | undefined =>
  option.findings.find((finding) => finding.contaminant === contaminant)
