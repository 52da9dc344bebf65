import type { Advice, Difference, Option, RuleTrace } from '../../contract/index.ts'

/** What a fired rule said, by its key in the trace. */
function textsOf(advice: Advice): ReadonlyMap<string, string> {
  const reasons = advice.points.flatMap((point) => [point, ...point.options].flatMap((one) => one.reasons))
  return new Map(reasons.map(({ trace, text }) => [trace, text]))
}

function rulesApart(from: Advice, to: Advice): Difference['rules'] {
  const before = new Map(from.trace.rules.map((rule) => [rule.key, rule]))
  const after = new Map(to.trace.rules.map((rule) => [rule.key, rule]))
  const said = [textsOf(from), textsOf(to)] as const
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((key) => {
    const [a, b] = [before.get(key), after.get(key)]
    const words = a?.outcome === b?.outcome && said[0].get(key) !== said[1].get(key)
    if (a?.outcome === b?.outcome && !words) return []
    if (isQuiet(a) && isQuiet(b)) return []
    const { id, title, point, equipment, contaminant } = (b ?? a)!
    return [
      {
        key,
        id,
        title,
        point,
        equipment,
        contaminant,
        from: a?.outcome ?? null,
        to: b?.outcome ?? null,
        words,
      },
    ]
  })
}

/** A rule that is not there, or that stayed quiet: going from one to the other changes nothing. */
const isQuiet = (rule: RuleTrace | undefined) =>
  rule === undefined || rule.outcome === 'not-fired' || rule.outcome === 'not-applicable'

function verdictsApart(from: Advice, to: Advice): Difference['verdicts'] {
  return from.points.flatMap(({ name, options }, at) =>
    options.flatMap((before) => {
      const after: Option | undefined = to.points[at]?.options.find((o) => o.equipment === before.equipment)
      if (!after || (after.verdict === before.verdict && after.rank === before.rank)) return []
      const { equipment, label } = before
      return [
        {
          point: name,
          equipment,
          label,
          from: before.verdict,
          to: after.verdict,
          ranks: [before.rank, after.rank] as [number | null, number | null],
        },
      ]
    }),
  )
}

/** What changes between two pieces of advice on one brief under two rule books; nothing else is listed. */
export function differenceOf(from: Advice, to: Advice): Difference {
  return {
    from: from.versions,
    to: to.versions,
    rules: rulesApart(from, to),
    verdicts: verdictsApart(from, to),
    summary: from.summary === to.summary ? null : [from.summary, to.summary],
  }
}
