import { lineUp } from '../advice/assess/line-up.ts'
import { placeId } from '../advice/facts/place-id.ts'
import { theMachine } from '../advice/say/machine-words.ts'
import type { Advice, Finding, Machine, Option, Point, Quote } from '../contract/index.ts'
import type { Laid, Wanted } from './laid.ts'

/** A size a supplier claims for a machine, with what the advice says of it. */
export interface Claim {
  readonly index: number
  readonly given: Quote
  readonly judgement: Advice['quotes'][number]['judgement']
  readonly text: string
}

/** One column of a comparison: a machine at an inspection point of one brief, with all that is claimed for it. */
export interface Side {
  /** Stands in the address: "p1.xray-dual"; "B.p1.xray-dual" for that of a second pack. */
  readonly key: string
  readonly words: string
  /** The same as a sentence takes it: "the dual-energy x-ray machine". */
  readonly called: string
  readonly laid: Laid
  readonly pointIndex: number
  readonly point: Point
  readonly machine: Machine
  readonly option: Option
  /** One for every piece looked for in any of the briefs; null where this brief does not look for it. */
  readonly findings: readonly (Finding | null)[]
  readonly claims: readonly Claim[]
}

/** Everything of one brief that can be laid side by side, in the order of the points and of their ranking. */
function sidesOfOne(laid: Laid, which: number, wanted: readonly Wanted[]): Side[] {
  const { brief, advice, mark } = laid
  const claims = brief.quotes.map((given, index): Claim => {
    const judged = advice.quotes.find((one) => one.quote === index)
    return { index, given, judgement: judged?.judgement ?? 'cannot-tell', text: judged?.text ?? '' }
  })
  return advice.points.flatMap(({ name, options }, pointIndex) => {
    const point = brief.points[pointIndex]!
    const line = new Map(lineUp(brief, point).map(({ machine }) => [machine.id, machine]))
    return options.flatMap((option): Side[] => {
      const machine = line.get(option.equipment)
      if (!machine) return []
      const place = placeId({ point: pointIndex, equipment: option.equipment })
      const label = advice.points.length > 1 ? `${option.label}, ${name}` : option.label
      return [
        {
          key: which === 0 ? place : `${mark}.${place}`,
          words: mark === '' ? label : `${mark}: ${label}`,
          called: `${theMachine(option)}${advice.points.length > 1 ? ` at “${name}”` : ''}`,
          laid,
          pointIndex,
          point,
          machine,
          option,
          findings: wanted.map(
            ({ at }) => option.findings.find(({ contaminant }) => contaminant === at[which]) ?? null,
          ),
          claims: claims.filter(({ given }) => given.equipment === option.equipment),
        },
      ]
    })
  })
}

export const sidesOf = (laid: readonly Laid[], wanted: readonly Wanted[]): Side[] =>
  laid.flatMap((one, which) => sidesOfOne(one, which, wanted))

/** The same sides called by their machine alone where they stand at one point. */
export function namedShort(sides: readonly Side[]): Side[] {
  if (new Set(sides.map(({ point }) => point.name)).size > 1) return [...sides]
  return sides.map((side) => ({
    ...side,
    called: theMachine(side.option),
    words: side.laid.mark === '' ? side.option.label : `${side.laid.mark}: ${side.option.label}`,
  }))
}
