import type { Brief } from '../../contract/index.ts'
import { likelihoodOf, SEVERITY_WORDS } from '../class/look-up.ts'
import type { Answers } from '../line/answers.ts'

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

/** Likelihood: a person's answer, else from the pieces of concern that finds say arrive a year, else the brief's word. */
export function likelihoodFrom(
  brief: Brief,
  contaminant: number,
  beforeAYear: number | null,
  isBound: boolean,
  answers: Answers,
): { value: number; from: string } {
  const filled =
    beforeAYear === null ? brief.contaminants[contaminant]!.likelihood : likelihoodOf(beforeAYear)
  const held = answers.number(`c${contaminant}.likelihood`, filled, '', [1, LIKELIEST])
  if (held.from === 'entered') return { value: Math.round(held.value), from: held.because }
  const assumed = brief.assumed.some(({ path }) => path === `contaminants.${contaminant}.likelihood`)
  const from =
    beforeAYear !== null
      ? `${Number(beforeAYear.toPrecision(2))} pieces of concern a year arrive${isBound ? ' at most (nothing was found)' : ''}, estimated from the finds`
      : assumed
        ? 'not stated; the middle of the scale is assumed'
        : 'entered in the brief; no finds are logged'
  return { value: filled, from }
}
