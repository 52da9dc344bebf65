import { lineUp } from '../advice/assess/line-up.ts'
import { placeId } from '../advice/facts/place-id.ts'
import type { Advice, Brief, Machine, Option, Point, Quote } from '../contract/index.ts'

/** A size a supplier quoted, with what the advice says of it. */
export interface QuotedSize {
  readonly index: number
  readonly given: Quote
  readonly judgement: Advice['quotes'][number]['judgement']
  readonly text: string
}

/** One side of a comparison: a machine at an inspection point, or one supplier's quote for such a machine. */
export interface Side {
  /** Stands in the address: "p1.xray-dual" or "q0". */
  readonly key: string
  readonly words: string
  readonly pointIndex: number
  readonly point: Point
  readonly machine: Machine
  readonly option: Option
  /** Sizes quoted for this machine; on a quote's side that one only. */
  readonly quotes: readonly QuotedSize[]
}

export const MOST_SIDES = 3

/** Everything of a brief that can be laid side by side, in the order of the points, quotes last. */
export function sidesOf(brief: Brief, advice: Advice): Side[] {
  const many = advice.points.length > 1
  const quotes = brief.quotes.map((given, index): QuotedSize => {
    const judged = advice.quotes.find((one) => one.quote === index)
    return { index, given, judgement: judged?.judgement ?? 'cannot-tell', text: judged?.text ?? '' }
  })
  const machines = advice.points.flatMap(({ name, options }, pointIndex) => {
    const point = brief.points[pointIndex]!
    const line = new Map(lineUp(brief, point).map(({ machine }) => [machine.id, machine]))
    return options.flatMap((option): Side[] => {
      const machine = line.get(option.equipment)
      if (!machine) return []
      return [
        {
          key: placeId({ point: pointIndex, equipment: option.equipment }),
          words: many ? `${option.label}, ${name}` : option.label,
          pointIndex,
          point,
          machine,
          option,
          quotes: quotes.filter(({ given }) => given.equipment === option.equipment),
        },
      ]
    })
  })
  const quoted = quotes.flatMap((quote): Side[] => {
    const side = machines.findLast(({ option }) => option.equipment === quote.given.equipment)
    return side
      ? [
          {
            ...side,
            key: `q${quote.index}`,
            words: `quote ${quote.index + 1}, ${side.words}`,
            quotes: [quote],
          },
        ]
      : []
  })
  return [...machines, ...quoted]
}

/** The same sides called by their machine alone where they stand at one point. */
export function namedShort(sides: readonly Side[]): Side[] {
  const [first] = sides
  if (!first || sides.some(({ pointIndex }) => pointIndex !== first.pointIndex)) return [...sides]
  return sides.map((side) => ({
    ...side,
    words: side.key.startsWith('q')
      ? `quote ${side.quotes[0]!.index + 1}, ${side.option.label}`
      : side.option.label,
  }))
}

/**
 * The sides asked for, at most three, in the order asked; where fewer than two are asked, the quotes if there
 * are two of them, else the two first of the last point that ranks two.
 */
export function pickSides(sides: readonly Side[], keys: readonly string[]): Side[] {
  const asked = [...new Set(keys)].flatMap((key) => sides.find((side) => side.key === key) ?? [])
  if (asked.length >= 2) return asked.slice(0, MOST_SIDES)
  const quoted = sides.filter(({ key }) => key.startsWith('q'))
  if (quoted.length >= 2) return quoted.slice(0, MOST_SIDES)
  const machines = sides.filter(({ key }) => key.startsWith('p'))
  const ranked = machines.filter(({ option }) => option.rank !== null)
  const atPoint = (pointIndex: number) => ranked.filter((side) => side.pointIndex === pointIndex)
  const last = ranked.findLast(({ pointIndex }) => atPoint(pointIndex).length >= 2)
  const two = last ? atPoint(last.pointIndex).slice(0, 2) : ranked.slice(0, 2)
  const first = asked[0]
  if (!first) return two
  const other = two.find(({ key }) => key !== first.key)
  return other ? [first, other] : [first]
}
