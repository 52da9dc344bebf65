import type { Advice, Finding, Option } from '../../contract/index.ts'

/** How two pieces of advice on one stand differ. */
export interface Effect {
  /** Verdicts and met sizes that turn. */
  readonly turned: readonly { readonly option: Option; readonly finding: Finding }[]
  /** The size that moves most, as a factor (1: none does). */
  readonly most: { readonly option: Option; readonly finding: Finding; readonly factor: number } | null
  /** Mean of the logarithms of the factors. */
  readonly meanLog: number
  /** Rules that fire in one and not in the other. */
  readonly rules: readonly string[]
}

/** A size that is there on one side only counts as twice as large (judgement). */
const APPEARS = Math.log(2)

const sizeOf = (f: Finding) => f.cautiousMm ?? f.expectedMm

function logFactor(a: number | null, b: number | null): number {
  if (a === null || b === null) return a === b ? 0 : APPEARS
  return Math.abs(Math.log(b / a))
}

/** Rules that word what follows from the sizes, which are looked at themselves. */
const OF_SIZES: readonly Advice['trace']['rules'][number]['type'][] = ['parts', 'misses', 'judges']

/** Rules that fire. */
const firedIn = (advice: Advice) =>
  new Map(
    advice.trace.rules
      .filter(({ outcome, type }) => outcome === 'fired' && !OF_SIZES.includes(type))
      .map(({ id, title }) => [id, title]),
  )

export function effectOf(base: Advice, tried: Advice): Effect {
  const rows = base.points.flatMap(({ options }, at) =>
    options.flatMap((before) => {
      const after = tried.points[at]?.options.find((o) => o.equipment === before.equipment)
      return (after?.findings ?? []).map((finding, i) => ({
        option: after!,
        finding,
        was: before.findings[i]!,
      }))
    }),
  )
  const logs = rows.map(({ finding, was }) => logFactor(sizeOf(was), sizeOf(finding)))
  const worst = logs.length === 0 ? -1 : logs.indexOf(Math.max(...logs))
  const [before, after] = [firedIn(base), firedIn(tried)]
  const rules = [...new Set([...before.keys(), ...after.keys()])].filter(
    (id) => before.has(id) !== after.has(id),
  )
  return {
    turned: rows.filter(({ finding, was }) => finding.meets !== was.meets),
    most: worst < 0 ? null : { ...rows[worst]!, factor: Math.exp(logs[worst]!) },
    meanLog: logs.length === 0 ? 0 : logs.reduce((sum, x) => sum + x, 0) / logs.length,
    rules: rules.map((id) => after.get(id) ?? before.get(id)!),
  }
}
