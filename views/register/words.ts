import type { Hazard, Misses } from '../../src/contract/register.ts'
import type { ControlClass, Owed } from '../../src/register/class/classify.ts'

export const CLASS_WORDS: Readonly<Record<ControlClass, string>> = {
  CCP: 'critical control point (CCP)',
  OPRP: 'operational prerequisite (OPRP)',
  PRP: 'prerequisite (PRP)',
  'not-controlled-here': 'not controlled here',
  undecided: 'undecided',
}

const OWED_WORDS: Readonly<Record<Owed, string>> = {
  lean: 'what its failure would mean',
  validation: 'validation on this product',
  'in-time': 'that a failure shows in time',
  action: 'who holds and releases',
}

export const classWords = (of: string): string => CLASS_WORDS[of as ControlClass] ?? of

/** "proposed critical control point (CCP); owed: validation on this product". */
export function classWithOwed(of: string, owed: readonly string[]): string {
  const words = classWords(of)
  if (owed.length === 0) return words
  const what = owed.map((one) => OWED_WORDS[one as Owed] ?? one).join(', ')
  return of === 'undecided' ? `${words}; open: ${what}` : `proposed ${words}; owed: ${what}`
}

/** The same where what is owed stands once beside the table: "proposed critical control point (CCP)". */
export const classProposed = (of: string, owed: readonly string[]): string =>
  owed.length > 0 && of !== 'undecided' ? `proposed ${classWords(of)}` : classWords(of)

/** What the class of a hazard still hangs on: what its deciding control owes, unless a person set that class. */
export function owedBy({ controls, decisive }: Hazard): readonly string[] {
  const control = decisive === null ? null : controls[decisive]!
  return control && control.class === control.proposed ? control.owed : []
}

const ANSWERS: Readonly<Record<string, string>> = {
  yes: 'yes',
  no: 'no',
  partly: 'partly',
  unknown: 'not known',
  ccp: 'last of its kind, or grave',
  oprp: 'one of several, soon seen',
  shown: 'measurable, and shown on this product',
  predicted: 'measurable, only predicted',
  observable: 'only observable',
  neither: 'neither',
}

export const answerWords = (answer: string): string => ANSWERS[answer] ?? answer

const FROM: Readonly<Record<string, string>> = {
  computed: 'filled in from brief and advice',
  entered: 'answered by a person',
  assumed: 'assumed',
  unknown: 'nobody said; counts as unfavourable',
}

export const fromWords = (from: string): string => FROM[from] ?? from

/** A rate per million or pieces a year with two figures; a dash where there is none. */
export function rateWords(value: number | null): string {
  if (value === null) return '–'
  if (value === 0) return '0'
  const figures = Number(value.toPrecision(2))
  if (figures >= 0.001) return figures.toLocaleString('en-GB', { maximumSignificantDigits: 12 })
  const [digits = '', power = ''] = figures.toExponential().split('e')
  return `${digits} × 10${[...power].map((c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)])).join('')}`
}

/** "0.2 to 0.5"; a dash where there is no range. */
export const rangeWords = (low: number | null, high: number | null): string =>
  low === null || high === null ? '–' : `${rateWords(low)} to ${rateWords(high)}`

export const lengthWords = (fromMm: number): string =>
  fromMm === 0 ? 'all pieces' : `${fromMm} mm long or longer`

/** A share in per cent with two figures; one that only rounds to all is not called all. */
export function percentWords(share: number): string {
  const percent = Number((100 * share).toPrecision(2))
  return percent === 100 && share < 1 ? 'over 99 %' : `${percent} %`
}

/** Pieces a year with the range of the rate behind them; a bound where nothing was found, or that no log stands behind it. */
export function yearlyWords(row: Misses | undefined, incidence: Hazard['incidence']): string {
  if (!row || row.piecesAYear === null || row.after === null) return 'no finds logged'
  const one = (value: number) => rateWords(Number(value.toPrecision(1)))
  if (incidence.isBound) return `at most ${one(row.piecesAYear)}: nothing was found`
  if (row.low === null || row.high === null || row.after === 0)
    return `${one(row.piecesAYear)}, no range: no log stands behind it`
  const scale = row.piecesAYear / row.after
  return `${one(row.piecesAYear)} (${one(row.low * scale)} to ${one(row.high * scale)})`
}
