import { entersBehind } from '../../brief/entry.ts'
import type { Brief, StillEnters } from '../../contract/index.ts'
import type { PlacedOutcome } from '../stages.ts'
import { joined } from './said.ts'

/** What can still enter behind each inspection point, in the words of the rules that fired there. */
export function stillEnters(brief: Brief, outcomes: readonly PlacedOutcome[]): StillEnters[] {
  return brief.points.map((point, at): StillEnters => {
    const known = brief.contaminants.map((_, c) => entersBehind(brief, c, at))
    const said = outcomes.filter((o) => o.outcome === 'fired' && o.type === 'combines' && o.pointIndex === at)
    return {
      point: point.name,
      contaminants: known.every((one) => one === null)
        ? null
        : known.flatMap((one, c) => (one === true ? [c] : [])),
      text: joined(said),
      rules: said.map(({ rule }) => rule),
    }
  })
}
