/** Words an answer to one of the eight questions may be; each question takes its own. */
export const ANSWER_WORDS = {
  q1: ['yes', 'no', 'unknown'],
  q2: ['yes', 'no', 'unknown'],
  q3: ['yes', 'partly', 'no', 'unknown'],
  q4: ['yes', 'no', 'unknown'],
  q5: ['ccp', 'oprp', 'unknown'],
  q6: ['shown', 'predicted', 'observable', 'neither', 'unknown'],
  q7: ['yes', 'no', 'unknown'],
  q8: ['yes', 'no', 'unknown'],
} as const

export type QuestionId = keyof typeof ANSWER_WORDS
export type Answered = { readonly [Q in QuestionId]: (typeof ANSWER_WORDS)[Q][number] }

export const QUESTION_IDS = Object.keys(ANSWER_WORDS) as QuestionId[]

export const CLASSES = ['CCP', 'OPRP', 'PRP', 'not-controlled-here', 'undecided'] as const
export type ControlClass = (typeof CLASSES)[number]

/** What a class still hangs on: each is owed before the class is more than a proposal. */
export const OWED = ['lean', 'validation', 'in-time', 'action'] as const
export type Owed = (typeof OWED)[number]

export interface Classed {
  readonly class: ControlClass
  /** The question that settled it. */
  readonly by: QuestionId
  readonly owed: readonly Owed[]
}

const settled = (to: ControlClass, by: QuestionId): Classed => ({ class: to, by, owed: [] })

/**
 * Class of one control for one hazard, by the eight questions in turn; consistent with ISO 22000:2018 8.5.2.4 and
 * the example tree of the 2022 Codex revision, in an order and words of our own. Unknown counts as the
 * unfavourable answer; two unknown among the last four leave it undecided, one leaves a proposal that owes it.
 */
export function classify(a: Answered): Classed {
  if (a.q1 === 'no') return settled('PRP', 'q1')
  if (a.q2 === 'yes') return settled('PRP', 'q2')
  if (a.q3 === 'no' || a.q3 === 'unknown') return settled('not-controlled-here', 'q3')
  if (a.q4 === 'yes') return settled('OPRP', 'q4')
  const unknown = [a.q5, a.q6, a.q7, a.q8].filter((answer) => answer === 'unknown').length
  if (a.q6 === 'neither') return settled('undecided', 'q6')
  if (a.q7 === 'no') return settled('undecided', 'q7')
  if (a.q8 === 'no') return settled('undecided', 'q8')
  const owed: Owed[] = []
  if (a.q5 === 'unknown') owed.push('lean')
  if (a.q6 === 'predicted' || a.q6 === 'unknown') owed.push('validation')
  if (a.q7 === 'unknown') owed.push('in-time')
  if (a.q8 === 'unknown') owed.push('action')
  if (unknown >= 2) return { class: 'undecided', by: firstUnknown(a), owed }
  if (a.q5 === 'oprp') return { class: 'OPRP', by: 'q5', owed }
  if (a.q6 === 'observable') return { class: 'OPRP', by: 'q6', owed }
  return { class: 'CCP', by: 'q8', owed }
}

const firstUnknown = (a: Answered): QuestionId =>
  (['q5', 'q6', 'q7', 'q8'] as const).find((q) => a[q] === 'unknown') ?? 'q8'
