import type { Finding, PiecePosition, Point } from '../contract/index.ts'
import { reachable } from '../register/sizes/from-finding.ts'

/** Where a zone of a pack lies, for the picture: shares of length, width and height (where the name leaves it open). */
const ZONES: readonly (readonly [RegExp, Omit<PiecePosition, 'name'>])[] = [
  [/base|floor|bottom|heel/i, { along: 0.5, across: 0.75, up: 0.06 }],
  [/closure|lid|shoulder|top/i, { along: 0.5, across: 0.5, up: 0.94 }],
  [/corner/i, { along: 0.95, across: 0.95, up: 0.1 }],
  [/edge|rim|wall|seam/i, { along: 0.5, across: 0.96, up: 0.5 }],
]

const middle = { along: 0.5, across: 0.5, up: 0.5 }

/** The middle of a stream, in words of who stands beside it. */
const IN_THE_STREAM = {
  loose: 'in the middle of the belt, at half the depth of the food, ahead of the unit',
  pumped: 'in the middle of the pipe, through the port ahead of the unit',
  'free-fall': 'into the middle of the stream, above the unit',
} as const

/**
 * The places a check sends its piece to, worst first. A coil sees worst on the centre line of the product's path:
 * leading, middle and trailing there. An x-ray machine sees worst under the most food and at seams, edges and base.
 */
export function placesToCheck(family: string, point: Point, finding: Finding): PiecePosition[] {
  if (point.stage !== 'packed') return [{ name: IN_THE_STREAM[point.stage], ...middle }]
  if (family === 'coil' || family === 'static-field')
    return [
      { name: 'middle of the pack, on the centre line', ...middle },
      { name: 'leading end, on the centre line', ...middle, along: 0.95 },
      { name: 'trailing end, on the centre line', ...middle, along: 0.05 },
    ]
  const seen = reachable(finding).filter(({ sizes, state }) => sizes.expectedMm !== null && state !== 'blind')
  const worst =
    seen.length > 1 ? seen.reduce((a, b) => (b.sizes.expectedMm! > a.sizes.expectedMm! ? b : a)) : null
  if (worst !== null && worst !== seen[0])
    return [
      { name: worst.name, ...placeOf(worst.name) },
      { name: 'where the food is thickest', ...middle },
    ]
  return [
    { name: 'where the food is thickest', ...middle },
    { name: 'at a seam or an edge', along: 0.05, across: 0.5, up: 0.5 },
  ]
}

const placeOf = (name: string) => ZONES.find(([pattern]) => pattern.test(name))?.[1] ?? middle
