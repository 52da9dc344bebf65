import type { Brief } from '../../contract/index.ts'
import type { FactWriter } from './fact-sheet.ts'

/** The sizes of one finding, mm, of whatever family. */
export interface Sizes {
  readonly contaminant: number
  readonly bestMm: number | null
  readonly expectedMm: number | null
  readonly sureMm: number | null
  readonly cautiousMm: number | null
  readonly chanceAtMustFind: number | null
  readonly limitMm: number
  readonly widest: string
}

/** How many contaminants are missed at the size to find, and how many are found only if all goes well. */
export function writeCounts(write: FactWriter, brief: Brief, findings: readonly Sizes[]): void {
  let unmet = 0
  let close = 0
  for (const finding of findings) {
    const mustFindMm = brief.contaminants[finding.contaminant]?.mustFindMm ?? null
    if (mustFindMm === null) continue
    if (finding.expectedMm === null || finding.expectedMm > mustFindMm) unmet += 1
    else if (finding.cautiousMm === null || finding.cautiousMm > mustFindMm) close += 1
  }
  write.computed('findings.unmet', unmet)
  write.computed('findings.close', close)
}

type Say = (id: string, value: string | number | boolean, name?: string) => void

/** Sizes as facts; a size there is not is left out. `say` links a value to its calculation. */
export function writeSizes(say: Say, finding: Sizes): void {
  const { bestMm, expectedMm, sureMm, cautiousMm, chanceAtMustFind } = finding
  say('finding.possible', bestMm !== null, 'best')
  say('finding.hasSize', expectedMm !== null)
  say('finding.limitMm', finding.limitMm)
  if (bestMm !== null) say('finding.bestMm', bestMm, 'best')
  if (expectedMm !== null) say('finding.expectedMm', expectedMm)
  if (sureMm !== null) say('finding.sureMm', sureMm)
  if (cautiousMm !== null) say('finding.cautiousMm', cautiousMm, 'cautious')
  if (chanceAtMustFind !== null) say('finding.chancePct', 100 * chanceAtMustFind)
  if (expectedMm !== null && cautiousMm !== null) say('finding.spread', cautiousMm / expectedMm, 'cautious')
  if (finding.widest !== '') say('finding.widest', finding.widest, 'ranges')
}
