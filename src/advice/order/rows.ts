import { entersBehind } from '../../brief/entry.ts'
import type { Brief, Finding } from '../../contract/index.ts'
import { isExpected } from '../assess/meets.ts'
import type { Combined, Line, Row, Standing } from '../stages.ts'
import { isUsable } from './combine.ts'
import { placesMissed } from './places-missed.ts'

interface Here<Placed extends Standing> {
  readonly point: number
  readonly option: Placed
  readonly finding: Finding
}

/** Smallest size that can be promised first, then the smallest expected, then by rank, then the later point. */
function nearer<P extends Standing>(a: Here<P>, b: Here<P>): number {
  const size = (mm: number | null) => mm ?? Number.POSITIVE_INFINITY
  const difference = (one: number, other: number) => (one === other ? 0 : one - other)
  return (
    difference(size(a.finding.cautiousMm), size(b.finding.cautiousMm)) ||
    difference(size(a.finding.expectedMm), size(b.finding.expectedMm)) ||
    a.option.rank! - b.option.rank! ||
    b.point - a.point
  )
}

/** Every machine in the order of a line, with its finding of one contaminant, at points where it may count. */
function findingsOf<P extends Standing>(line: Line, options: readonly (readonly P[])[], contaminant: number) {
  return line.points.flatMap((point) =>
    options[point]!.flatMap((option): Here<P>[] => {
      const finding = option.findings.find((f) => f.contaminant === contaminant)
      return finding && option.rank !== null && !option.excluded ? [{ point, option, finding }] : []
    }),
  )
}

const isFound = ({ finding }: { readonly finding: Finding }) => finding.expectedMm !== null

function meetsIn(by: Row['by'], finding: Finding): Row['meets'] {
  if (by === 'build') return finding.mustFindMm === null ? 'open' : 'no'
  return finding.meets
}

/**
 * What becomes of one contaminant on a line: the use of the recommendation that is there for it; where there is
 * none, a use or else any machine that comes nearest to it where it can still be caught; where a larger build
 * would meet it, or nothing else finds it, that build; else a machine without computed sizes that reacts to it.
 */
function rowOf<P extends Standing>(
  brief: Brief,
  line: Line,
  combined: Combined<P>,
  options: readonly (readonly P[])[],
  contaminant: number,
): Row<P> {
  const all = findingsOf(line, options, contaminant)
  const behind = ({ point }: Here<P>) => entersBehind(brief, contaminant, point) === true
  const early = all.find((one) => isUsable(one.option) && behind(one) && isExpected(one.finding.meets))
  const row = (by: Row['by'], one: Here<P>): Row<P> => ({
    contaminant,
    by,
    wouldMeet: by === 'build' && isExpected(one.finding.meets),
    point: one.point,
    option: one.option,
    finding: one.finding,
    meets: meetsIn(by, one.finding),
    places: placesMissed(one.finding),
    metTooEarlyAt: early?.point ?? null,
  })
  const use = combined.uses.find(({ contaminants }) => contaminants.includes(contaminant))
  const used = use && all.find(({ point, option }) => point === use.point && option === use.option)
  if (used) return row('use', used)
  const here = all.filter((one) => !behind(one))
  const found = here.filter(isFound).sort(nearer)
  const builds = found.filter(({ option }) => option.askFor !== null)
  const usable = found.filter(({ option }) => isUsable(option))
  const build = builds
    .filter(({ finding }) => isExpected(finding.meets))
    .sort((a, b) => b.point - a.point || a.option.rank! - b.option.rank!)[0]
  if (build) return row('build', build)
  const nearest = usable.find(({ option }) => combined.uses.some((one) => one.option === option)) ?? usable[0]
  if (nearest) return row('nearest', nearest)
  if (builds[0]) return row('build', builds[0])
  const reacting = here.find(({ option, finding }) => isUsable(option) && finding.meets === 'open')
  if (reacting) return row('reacts', reacting)
  return {
    contaminant,
    by: 'none',
    wouldMeet: false,
    point: null,
    option: null,
    finding: null,
    meets: 'cannot',
    places: [],
    metTooEarlyAt: early?.point ?? null,
  }
}

/** A row for every contaminant of the brief on one line. */
export const rowsOf = <P extends Standing>(
  brief: Brief,
  line: Line,
  combined: Combined<P>,
  options: readonly (readonly P[])[],
): Row<P>[] => brief.contaminants.map((_, c) => rowOf(brief, line, combined, options, c))
