import type { Advice } from '../../src/contract/advice.ts'
import type { CheckPoint } from '../../src/contract/checks.ts'

export type Cited = Pick<Advice, 'trace' | 'register' | 'checks' | 'cautions' | 'points'>

/** Sources of a calculation: its own, else those of what went into it. */
export function calculationSources({ trace }: Cited): (id: string) => readonly string[] {
  const calculations = new Map(trace.calculations.map((one) => [one.id, one]))
  const walk = (id: string, seen: Set<string>): string[] => {
    const one = calculations.get(id)
    if (!one || seen.has(id)) return []
    seen.add(id)
    return one.sources.length > 0 ? one.sources : one.inputs.flatMap((input) => walk(input, seen))
  }
  return (id) => [...new Set(walk(id, new Set()))]
}

/** Ids of the sums behind the hold table and the rejects of a machine; one that was not made has no sources. */
export const sumsOf = ({ pointIndex, equipment }: CheckPoint): readonly [hold: string, rejects: string] => [
  `p${pointIndex}.${equipment}.hold`,
  `p${pointIndex}.${equipment}.rejects`,
]

/** The sources that register, check plan, sizes in place and cautions rest on, in the order of the trace. */
export function citedSources(advice: Cited): Advice['trace']['sources'] {
  const of = calculationSources(advice)
  const { register, checks, cautions, points } = advice
  const inPlace = register.lines.flatMap(({ controls }) => controls)
  const findings = points.flatMap(({ name, options }) =>
    options
      .filter(({ equipment }) => inPlace.some((one) => one.point === name && one.equipment === equipment))
      .flatMap((option) => option.findings),
  )
  const calculations = [
    ...findings.map(({ calculation }) => calculation),
    ...register.hazards.flatMap((hazard) => [
      hazard.incidence.calculation,
      ...[...hazard.controls, ...hazard.separators].map(({ calculation }) => calculation),
      ...hazard.missesPerMillion.map(({ calculation }) => calculation),
    ]),
    ...checks.points.flatMap((check) => [
      ...check.pieces.map(({ calculation }) => calculation),
      ...sumsOf(check),
    ]),
  ]
  const said = cautions.filter(({ id }) => !register.lawElsewhere.includes(id))
  const cited = new Set([
    ...calculations.flatMap(of),
    ...[...register.cites, ...register.law, ...said].flatMap(({ sources }) => sources),
  ])
  return advice.trace.sources.filter(({ id }) => cited.has(id))
}
