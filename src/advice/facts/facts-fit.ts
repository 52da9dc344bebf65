import type { FactWriter } from './fact-sheet.ts'

interface Refusal {
  readonly id: string
  readonly given: number
  readonly allowed: number
}

/** Width and height a pack needs against what the machine takes, mm; undefined where it states no limit. */
interface Fit {
  readonly refusals: readonly Refusal[]
  readonly widthMm: number
  readonly heightMm: number
  readonly widestMm: number | undefined
  readonly highestMm: number | undefined
  /** Writes a limit of the machine with where it comes from. */
  readonly limit: (id: string, valueMm: number) => void
}

/** What the pack needs and the machine takes; a refusal of the physics always shows up here. */
export function writeFit(write: FactWriter, fit: Fit): void {
  const refused = (id: string) => fit.refusals.find((refusal) => refusal.id === id)
  const wide = refused('too-wide')
  const high = refused('too-high')
  write.derived('fit.widthNeededMm', wide?.given ?? fit.widthMm, 'W', 'width × lanes', [
    'point.widthMm',
    'point.lanes',
  ])
  write.derived('fit.heightNeededMm', high?.given ?? fit.heightMm, 'H', 'height', ['point.heightMm'])
  const widest = wide?.allowed ?? fit.widestMm
  const highest = high?.allowed ?? fit.highestMm
  if (widest !== undefined) fit.limit('fit.widthAllowedMm', widest)
  if (highest !== undefined) fit.limit('fit.heightAllowedMm', highest)
}
