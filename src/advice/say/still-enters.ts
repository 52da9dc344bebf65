import { entersBehind } from '../../brief/entry.ts'
import type { Brief, Point, StillEnters } from '../../contract/index.ts'
import { contaminantWords, wordList } from './words.ts'

/** Parts that close a pack. */
const CLOSING = ['lid', 'closure', 'wrap', 'sleeve']

const isClosed = (point: Point) =>
  point.stage === 'packed' && point.parts.some(({ place }) => CLOSING.includes(place))

function withoutFlow(point: Point, isLast: boolean): string {
  if (isClosed(point))
    return 'The pack is closed here: nothing more gets in unless it is opened, and what the packing itself brought is inside already.'
  const until = isLast ? 'This is the last inspection point' : 'Until the pack is closed'
  return `${until}: whatever belts, blades, seals, people and packaging bring behind this point can still get in. The brief does not say what; give the steps of the flow and where each contaminant enters.`
}

/** What can still enter behind each inspection point: as the flow says, else what the stage alone tells. */
export function stillEnters(brief: Brief): StillEnters[] {
  return brief.points.map((point, pointIndex): StillEnters => {
    const known = brief.contaminants.map((_, c) => entersBehind(brief, c, pointIndex))
    const isLast = pointIndex === brief.points.length - 1
    if (known.every((one) => one === null))
      return { point: point.name, contaminants: null, text: withoutFlow(point, isLast) }
    const pick = (wanted: boolean | null) => known.flatMap((one, c) => (one === wanted ? [c] : []))
    const words = (contaminants: readonly number[]) =>
      wordList(contaminants.map((c) => contaminantWords(brief, c)))
    const later = pick(true)
    const open = pick(null)
    const text = [
      later.length > 0
        ? `By the flow, ${words(later)} can still enter behind this point; a machine here cannot see it.`
        : 'By the flow, nothing named in the brief enters behind this point.',
      open.length > 0 ? `Where ${words(open)} may enter is not said.` : '',
    ]
    return { point: point.name, contaminants: later, text: text.filter(Boolean).join(' ') }
  })
}
