import { type MmAxis, mmAxis } from '../../../src/charts/mm-axis.ts'
import type { Advice } from '../../../src/contract/advice.ts'

/** One axis for every size of an advice, so that bars compare down the page. */
export function axisOf(advice: Advice): MmAxis {
  const ranked = advice.points.flatMap(({ options }) => options.filter(({ rank }) => rank !== null))
  const findings = ranked.flatMap((option) => option.findings)
  return mmAxis(findings.flatMap((one) => [one.bestMm, one.expectedMm, one.cautiousMm, one.mustFindMm]))
}
