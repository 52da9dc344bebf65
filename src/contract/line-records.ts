import { z } from 'zod'
import { oneOf, quantity, text } from './quantity.ts'

/** What the people of a line add to the brief: where things enter, how packs are taken out, finds, answers. */

export const REJECT_TYPES = ['pusher', 'air-jet', 'drop', 'diverter', 'flap', 'stop-belt'] as const
export const FOUND_BY = ['detector', 'operator', 'customer'] as const

/** How a bad pack is taken out, and what its timing hangs on. */
export const rejectSchema = z.strictObject({
  type: oneOf('type of reject', REJECT_TYPES).optional(),
  distanceToRejectMm: quantity('distance from the beam or coil to the reject', 'mm', 1, 20000).optional(),
  cycleMs: quantity('time the reject takes to act and return', 'ms', 1, 20000).optional(),
  positionErrorMm: quantity('error of position at the reject', 'mm', 0, 1000).optional(),
  shortestGapMm: quantity('shortest gap seen between packs', 'mm', 0, 20000).optional(),
})

/** A step at which a contaminant enters, and the share of its pieces that does so there. */
export const entrySchema = z.strictObject({
  step: text('step where it enters'),
  share: quantity('share that enters there', '', 0, 1).optional(),
})

const whole = (label: string, min: number, max: number) =>
  quantity(label, '', min, max).int({ error: `${label} must be a whole number from ${min} to ${max}` })

/** A line of the finds log: pieces of one contaminant found in so many packs. */
export const findSchema = z.strictObject({
  contaminant: whole('number of the contaminant, counted from 0', 0, 39),
  point: text('inspection point where it was found', 80).optional(),
  packs: quantity('packs inspected', '', 1, 1e12),
  found: whole('pieces found', 0, 1e6),
  events: whole('events they came from', 0, 1e6).optional(),
  by: oneOf('found by', FOUND_BY).optional(),
  date: text('date or span of dates', 40).optional(),
  lengthMm: quantity('longest length of the piece found', 'mm', 0.01, 1000).optional(),
  widthMm: quantity('width of the piece found', 'mm', 0.01, 1000).optional(),
  thicknessMm: quantity('thickness of the piece found', 'mm', 0.001, 1000).optional(),
  confirmedBy: text('confirmed by', 80).optional(),
})

/** A person's answer to a question of the register or the check plan, which overrules the one filled in. */
export const answerSchema = z.strictObject({
  question: text('question', 120).min(1, { error: 'name the question that is answered, such as c0.p1.q5' }),
  answer: text('answer', 300).min(1, { error: 'an answer must say something' }),
  because: text('reason of the answer', 500).min(1, {
    error: 'an answer that overrules needs its reason: it is printed beside it',
  }),
})

/** An assumption that a person looked at and confirmed as it stands. */
export const confirmedSchema = z.strictObject({
  what: text('assumption confirmed', 120).min(1, { error: 'name the assumption that is confirmed' }),
  by: text('confirmed by', 80).min(1, { error: 'say who confirmed it' }),
  date: text('date of confirmation', 40).min(1, { error: 'say when it was confirmed' }),
})

/**
 * What a person may answer, by what it speaks of: c0 a contaminant, c0.p1 a control of it, p1 a machine at an
 * inspection point, plant the whole; site.* are the questions of the site list. Numbers count from 0.
 */
export const ANSWER_KEYS = {
  c: ['severity', 'likelihood', 'median', 'factor', 'shape', 'acceptable'],
  cp: ['q1', 'q2', 'q3', 'q4', 'q5', 'q6', 'q7', 'q8', 'class', 'validation-by'],
  p: [
    'machine',
    'separators',
    'working-share',
    'interval',
    'react',
    'minutes-per-check',
    'reinspect-per-min',
    'minutes-per-reject',
    'key-holder',
  ],
  plant: [
    'days',
    'complaints',
    'piece-check',
    'retention',
    'author',
    'team',
    'flow-confirmed',
    'issue',
    'changed',
    'released-by',
    'rework-to',
  ],
} as const

export type Reject = z.infer<typeof rejectSchema>
export type Entry = z.infer<typeof entrySchema>
export type Find = z.infer<typeof findSchema>
export type GivenAnswer = z.infer<typeof answerSchema>
export type Confirmed = z.infer<typeof confirmedSchema>
