import type { Brief, Calculation, CheckPiece, Finding } from '../contract/index.ts'
import { metals } from '../reference/electrical.ts'
import { materials } from '../reference/index.ts'
import { findingOf, type InPlace } from '../register/line/controls-in-place.ts'
import { calculation } from '../register/line/trail.ts'
import { chanceAt, chanceByLogit } from '../register/sizes/control-chance.ts'
import { placesOf, reachable } from '../register/sizes/from-finding.ts'
import { placesToCheck } from './positions.ts'
import { type ChanceBySize, failsByItself, notices, routinePiece, SERIES_MM } from './routine-piece.ts'

/** False failures a year that a check may bring: about one a quarter (judgement, no source). */
export const MOST_FALSE_FAILURES = 4

/** A piece so many times the size to find verifies nothing about it and is not offered (judgement, no source). */
const MOST_TIMES = 2

/** By how much sizes are taken to have grown when a check is asked what it notices. */
const WORSE = [1.1, 1.2, 1.3, 1.5] as const

export interface CheckRhythm {
  readonly checksPerDay: number
  readonly daysPerYear: number
}

/** The pieces of a machine's check: one for each contaminant that a piece can stand for and nothing else covers. */
export function piecesOf(
  brief: Brief,
  control: InPlace,
  rhythm: CheckRhythm,
): { pieces: CheckPiece[]; calculations: Calculation[] } {
  const wanted = governing(
    control.option.findings.filter(
      ({ expectedMm, mustFindMm }) => expectedMm !== null && mustFindMm !== null,
    ),
  )
  const most = MOST_FALSE_FAILURES / Math.max(1, wanted.length)
  const pieces = wanted.map((finding) => pieceOf(brief, control, finding, rhythm, most))
  return {
    pieces,
    calculations: pieces.map((piece) =>
      calculation(
        piece.calculation,
        `routine piece, ${piece.pieceMaterial}`,
        'd',
        piece.routineMm,
        'mm',
        `smallest of the series with at most ${Number(most.toPrecision(2))} false failures a year: (1 − Π P) · checks a day · days`,
        [findingOf(control, piece.contaminant)!.calculation],
        ['trade-practice', 'own-judgement'],
      ),
    ),
  }
}

/** Of pieces alike in material and shape only the smallest to find: who finds it finds the others. */
function governing(findings: readonly Finding[]): Finding[] {
  const kept = new Map<string, Finding>()
  for (const finding of findings) {
    const key = [finding.material, finding.shape, finding.placement, finding.lengthMm, finding.faceMm2].join(
      '|',
    )
    const other = kept.get(key)
    if (!other || finding.mustFindMm! < other.mustFindMm!) kept.set(key, finding)
  }
  return [...kept.values()]
}

function pieceOf(
  brief: Brief,
  control: InPlace,
  finding: Finding,
  rhythm: CheckRhythm,
  most: number,
): CheckPiece {
  const shown = finding.demonstrated?.sizeMm ?? null
  const promised = shown ?? finding.cautiousMm
  const basis = shown !== null ? 'demonstrated' : promised !== null ? 'cautious' : 'none'
  const places = placesToCheck(control.option.family, brief.points[control.pointIndex]!, finding)
  const worse = promised === null ? null : promised / finding.expectedMm!
  const passes = worse === null ? [] : passesOf(finding, places.length, worse)
  const series = SERIES_MM.filter((size) => size <= MOST_TIMES * finding.mustFindMm!)
  const chosen = passes.length === 0 ? null : routinePiece(series, passes, { ...rhythm, mostAYear: most })
  const routineMm = chosen?.sizeMm ?? null
  const byLogit = worse === null ? [] : passesOf(finding, places.length, worse, chanceByLogit)
  return {
    contaminant: finding.contaminant,
    label: materials.get(finding.material)?.label ?? finding.material,
    pieceMaterial: standIn(finding.material),
    shape: finding.shape,
    lengthMm: finding.lengthMm,
    faceMm2: finding.faceMm2,
    sizeToFindMm: finding.mustFindMm,
    predictedMm: finding.cautiousMm,
    demonstratedMm: shown,
    routineMm,
    chance: routineMm === null ? null : Math.min(...passes.map((pass) => pass(routineMm))),
    logit: {
      chance:
        routineMm === null || byLogit.length === 0
          ? null
          : Math.min(...byLogit.map((pass) => pass(routineMm))),
      routineMm:
        byLogit.length === 0
          ? null
          : (routinePiece(series, byLogit, { ...rhythm, mostAYear: most })?.sizeMm ?? null),
    },
    falseFailuresPerYear: chosen?.falseFailuresPerYear ?? null,
    notices: routineMm === null ? [] : notices(routineMm, passes, WORSE, rhythm.checksPerDay),
    positions: places,
    basis,
    calculation: `p${control.pointIndex}.${control.option.equipment}.c${finding.contaminant}.routine`,
  }
}

/** Chance by size of each run of a check: once in the worst place a piece can lie and be seen, the others in the body. */
function passesOf(finding: Finding, runs: number, worse: number, link = chanceAt): ChanceBySize[] {
  const places = placesOf(finding, worse).filter(({ a90Mm }) => a90Mm !== null)
  if (places.length === 0) return []
  const worst = places.reduce((a, b) => (b.a90Mm! > a.a90Mm! ? b : a))
  const body = places[0]!
  return Array.from({ length: runs }, (_, i) => (d: number) => {
    const { a50Mm, a90Mm } = i === 0 || reachable(finding).length === 0 ? worst : body
    return link(d, a50Mm, a90Mm)
  })
}

/** What the piece is made of: metals as they are; of glass, stone and bone something that shows no more than they do. */
function standIn(material: string): string {
  const label = materials.get(material)?.label ?? material
  if (metals.has(material)) return label
  return `stand-in for ${label.charAt(0).toLowerCase()}${label.slice(1)}`
}

/** Chance that a healthy machine fails a whole check, all pieces together. */
export const wholeCheckFails = (pieces: readonly CheckPiece[], { checksPerDay, daysPerYear }: CheckRhythm) =>
  failsByItself(
    pieces.map(({ falseFailuresPerYear }) => 1 - (falseFailuresPerYear ?? 0) / (checksPerDay * daysPerYear)),
  )
