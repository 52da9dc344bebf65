import type { Brief, Contaminant, Finding, Quote } from '../../contract/index.ts'
import type { Quoted, Standing } from '../stages.ts'

/** The finding of a quoted piece, if the brief asks for the same material and shape. */
function matching(brief: Brief, options: readonly Pick<Standing, 'equipment' | 'findings'>[], quote: Quote) {
  const same = (c: Contaminant) =>
    c.material === quote.material &&
    c.shape === (quote.shape ?? 'sphere') &&
    (quote.lengthMm === undefined || c.lengthMm === quote.lengthMm) &&
    (quote.faceMm2 === undefined || c.faceMm2 === quote.faceMm2)
  const index = brief.contaminants.findIndex(same)
  const option = options.find((o) => o.equipment === quote.equipment)
  return option?.findings.find((f) => f.contaminant === index) ?? null
}

/** The least size the physics leaves room for: the lower end of the best possible one, mm. */
export const lowestOf = ({ bestMm, bestRangeMm }: Finding): number | null => bestRangeMm?.[0] ?? bestMm

function kindOf(finding: Finding | null, { sizeMm, obtained }: Quote): Quoted['kind'] {
  if (!finding) return 'nothing-beside'
  const { bestMm, cautiousMm } = finding
  if (bestMm === null) return 'finds-none'
  if (sizeMm < (lowestOf(finding) ?? bestMm)) return 'below'
  if (obtained !== 'in-product') return 'elsewhere'
  if (cautiousMm !== null && sizeMm > cautiousMm) return 'loose'
  return sizeMm < bestMm ? 'near' : 'between'
}

const JUDGEMENT: Readonly<Record<Quoted['kind'], Quoted['judgement']>> = {
  'nothing-beside': 'cannot-tell',
  'finds-none': 'better-than-possible',
  below: 'better-than-possible',
  elsewhere: 'cannot-tell',
  loose: 'loose',
  near: 'inside',
  between: 'inside',
}

/** Each quote held against the computed sizes of the last inspection point that has its machine. */
export function quotedIn(
  brief: Brief,
  points: readonly { readonly options: readonly Pick<Standing, 'equipment' | 'findings'>[] }[],
): Quoted[] {
  return brief.quotes.map((quote, index) => {
    const point = points.findLastIndex(({ options }) => options.some((o) => o.equipment === quote.equipment))
    const finding = matching(brief, points[point]?.options ?? [], quote)
    const kind = kindOf(finding, quote)
    return { quote, index, point: point < 0 ? null : point, finding, kind, judgement: JUDGEMENT[kind] }
  })
}
