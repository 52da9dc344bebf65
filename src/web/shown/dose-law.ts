import type { DoseLaw } from '../../../views/advice/sizes/tube-and-dose.tsx'
import type { Brief } from '../../contract/index.ts'
import { doseCeilings, doseStatement } from '../../reference/dose-ceilings.ts'
import { sources } from '../../reference/index.ts'

const textOf = (id: string) => sources.get(id)?.text ?? id

/** The dose a market's law allows x-ray inspection, and the published statement of what is usual. */
export function doseLawOf(market: Brief['market']): DoseLaw {
  const ceiling = doseCeilings.get(market)
  return {
    ceiling: ceiling ? { gray: ceiling.gray, rule: ceiling.rule, source: textOf(ceiling.source) } : null,
    usualMicroGy: doseStatement.typicalAtMostMicroGy,
    usualSource: textOf(doseStatement.source),
  }
}
