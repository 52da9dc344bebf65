import type { Brief } from '../../contract/index.ts'
import { likelihoodOf, SEVERITY_WORDS } from '../class/look-up.ts'
import type { Answers } from '../line/answers.ts'
import type { Range } from '../rate/incidence.ts'

const WEAK = ['infants', 'elderly-or-patients']
const GRAVE = 5

export interface Rated {
  readonly value: number
  readonly words: string
  /** What it rests on, in words. */
  readonly basis: string
}

/** Severity: a person's answer, else the brief's, else the middle; the gravest where weak consumers eat it. */
export function severityOf(brief: Brief, contaminant: number, answers: Answers): Rated {
  const { severity } = brief.contaminants[contaminant]!
  const assumed = brief.assumed.some(({ path }) => path === `contaminants.${contaminant}.severity`)
  const weak = assumed && WEAK.includes(brief.consumer)
  const filled = weak ? GRAVE : severity
  const held = answers.number(`c${contaminant}.severity`, filled, '', [1, GRAVE])
  const value = Math.round(held.value)
  const basis =
    held.from === 'entered'
      ? held.because
      : weak
        ? 'not stated; the gravest, because the consumer bears little'
        : assumed
          ? 'not stated; the middle of the scale is assumed'
          : 'entered in the brief'
  return { value, words: SEVERITY_WORDS[value - 1]!, basis }
}

const LIKELIEST = 5

/** Pieces of concern that arrive in a year, before any control. */
export interface Arriving {
  /** null where nothing says. */
  readonly aYear: number | null
  /** 5 and 95 % of it; null where it is a bound, or no log stands behind it. */
  readonly range: Range | null
  /** Nothing was found: it is an upper bound. */
  readonly isBound: boolean
  readonly from: 'finds' | 'brief' | 'none'
}

/** Likelihood: a person's answer, else from the pieces of concern that arrive, else the brief's word. */
export function likelihoodFrom(
  brief: Brief,
  contaminant: number,
  arriving: Arriving,
  answers: Answers,
): { value: number; from: string; isWorkedOut: boolean } {
  const { aYear } = arriving
  const filled = aYear === null ? brief.contaminants[contaminant]!.likelihood : likelihoodOf(aYear)
  const held = answers.number(`c${contaminant}.likelihood`, filled, '', [1, LIKELIEST])
  if (held.from === 'entered')
    return { value: Math.round(held.value), from: held.because, isWorkedOut: false }
  const assumed = brief.assumed.some(({ path }) => path === `contaminants.${contaminant}.likelihood`)
  const from =
    aYear !== null
      ? arrivingWords({ ...arriving, aYear })
      : assumed
        ? 'not stated; the middle of the scale is assumed'
        : 'entered in the brief; no finds are logged'
  return { value: filled, from, isWorkedOut: aYear !== null }
}

const two = (value: number) => Number(value.toPrecision(2))

/** "5 pieces of concern a year arrive (5 to 95 %: 3.2 to 7), estimated from the finds". */
function arrivingWords({ aYear, range, isBound, from }: Arriving & { readonly aYear: number }): string {
  const pieces = `${two(aYear)} pieces of concern a year arrive`
  if (isBound) return `${pieces} at most (nothing was found), estimated from the finds`
  if (from === 'brief') return `${pieces}, from the figure in the brief, so without a range`
  const between = range ? ` (5 to 95 %: ${two(range.low)} to ${two(range.high)})` : ''
  return `${pieces}${between}, estimated from the finds`
}
