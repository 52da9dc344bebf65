import { entersBehind } from '../../brief/entry.ts'
import type { Brief, Part, Point } from '../../contract/index.ts'
import type { FactWriter } from './fact-sheet.ts'
import type { Materials } from './kinds/pack-kind.ts'

/** Parts that close a pack. */
const CLOSING: readonly Part['place'][] = ['lid', 'closure', 'wrap', 'sleeve']

const isClosed = ({ stage, parts }: Point) =>
  stage === 'packed' && parts.some(({ place }) => CLOSING.includes(place))

/** Names, each once: the shape of a piece does not matter to where it enters. */
const list = (names: readonly string[]) => [...new Set(names)].join(', ')

/** What can still enter behind a point: as the flow says, else what its stage alone tells. */
export function writeEntering(
  write: FactWriter,
  brief: Brief,
  pointIndex: number,
  materials: Materials,
): void {
  const known = brief.contaminants.map((_, c) => entersBehind(brief, c, pointIndex))
  const names = (wanted: boolean | null) =>
    brief.contaminants.flatMap(({ material }, c) =>
      known[c] === wanted ? [materials.get(material)?.label ?? material] : [],
    )
  write.computed(
    'point.waysInKnown',
    known.some((one) => one !== null),
  )
  write.computed('point.closed', isClosed(brief.points[pointIndex]!))
  write.computed('point.last', pointIndex === brief.points.length - 1)
  write.computed('point.entersBehind', names(true).length)
  write.computed('point.entersBehindNames', list(names(true)))
  write.computed('point.wayInOpen', names(null).length)
  write.computed('point.wayInOpenNames', list(names(null)))
}
