import type { Brief, Option } from '../../contract/index.ts'
import { isUnmet, type Orderable, partOptions, sizeRatio, worstRatio } from '../order/order.ts'
import { contaminantWords, wordList } from './why-not.ts'

/** An excluding rule that speaks of the machine itself, as the order takes it. */
const exclusionOf = (option: Option) =>
  option.reasons.find(({ type, contaminant }) => type === 'excludes' && contaminant === null)

/** An option as the order sees it. */
export const orderable = (option: Option): Orderable => ({
  excluded: exclusionOf(option) !== undefined,
  burden: option.burden,
  findings: option.findings,
})

const times = (ratio: number) =>
  ratio === Number.POSITIVE_INFINITY ? 'no size at all' : `${Number(ratio.toPrecision(2))} times`

/** The contaminant that sets the worst ratio of an option. */
function worstOf(brief: Brief, option: Option): string {
  const worst = worstRatio(option)
  const finding = option.findings.find((f) => sizeRatio(f) === worst)
  return finding ? ` (${contaminantWords(brief, finding.contaminant)})` : ''
}

function unmetOf(brief: Brief, option: Option, severity: number): string {
  const unmet = option.findings.filter(
    (f) => isUnmet(f) && brief.contaminants[f.contaminant]!.severity === severity,
  )
  if (unmet.length === 0) return `${option.label} leaves none`
  return `${option.label} leaves ${wordList(unmet.map((f) => contaminantWords(brief, f.contaminant)))}`
}

/** What puts one option before the other, by the first step of the order at which they part. */
export function partingWords(brief: Brief, first: Option, second: Option): string {
  if ((first.rank === null) !== (second.rank === null)) {
    const ideal = first.rank === null ? first : second
    return `${ideal.label} is an ideal shown for teaching and has no place in the order.`
  }
  const { step, severity, sign } = partOptions(brief.contaminants)(orderable(first), orderable(second))
  const [ahead, behind] = sign > 0 ? [second, first] : [first, second]
  switch (step) {
    case 'excluded':
      return `${behind.label} is excluded: ${exclusionOf(behind)!.text}`
    case 'unmet':
      return `Of the sizes of severity ${severity}, ${unmetOf(brief, ahead, severity!)} unmet at the value that can be promised; ${unmetOf(brief, behind, severity!)}.`
    case 'ratio':
      return `Both leave as many sizes unmet. The worst size ${ahead.label} can promise is ${times(worstRatio(ahead))} the size to find${worstOf(brief, ahead)}; that of ${behind.label} is ${times(worstRatio(behind))}${worstOf(brief, behind)}.`
    case 'burden':
      return `Both do as well on the sizes; ${ahead.label} asks less: burden ${ahead.burden} against ${behind.burden}.`
    case 'nothing':
      return 'The order cannot tell the two apart; they stand as they are listed.'
  }
}
