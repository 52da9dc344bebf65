import type { Level } from '../../src/exercises/voice.ts'

/** What every link of a sitting carries on. */
export interface Sitting {
  /** The brief in hand, packed; null for the exercises that need none. */
  readonly packed: string | null
  readonly level: Level
  readonly present: boolean
  /** Predictions so far, as they stand in the address. */
  readonly done: string
  /** The trainer's choice of exercises, as it stands in the address; empty where there is none. */
  readonly lesson: string
}

/** Which screen of an exercise. */
export interface Screen {
  /** Number of the question, from 1. */
  readonly question?: number
  /** Predictions to the questions before, joined by "_". */
  readonly guesses?: string
  /** The prediction to this one; "-" for none. */
  readonly guess?: string
  /** Reason apart from the answer, where a screen shows one thing. */
  readonly why?: boolean
  /** Clock of a timed exercise, ms since 1970. */
  readonly began?: number
  readonly ended?: number
  /** Asks the server to start the clock. */
  readonly start?: boolean
}

type Pair = readonly [name: string, value: string]

function carried({ packed, level, present, done, lesson }: Sitting): Pair[] {
  return [
    ...(packed ? [['b', packed] as const] : []),
    ...(level === 'plain' ? [['words', 'plain'] as const] : []),
    ...(present ? [['present', '1'] as const] : []),
    ...(lesson ? [['lesson', lesson] as const] : []),
    ...(done ? [['done', done] as const] : []),
  ]
}

const address = (path: string, pairs: readonly Pair[]) => {
  const query = pairs.map(([name, value]) => `${name}=${encodeURIComponent(value)}`).join('&')
  return query ? `${path}?${query}` : path
}

function screenPairs({ question, guesses, guess, why, began, ended, start }: Screen): Pair[] {
  return [
    ...(question && question > 1 ? [['q', String(question)] as const] : []),
    ...(guesses ? [['g', guesses] as const] : []),
    ...(began ? [['began', String(began)] as const] : []),
    ...(ended ? [['ended', String(ended)] as const] : []),
    ...(start ? [['start', '1'] as const] : []),
    ...(guess ? [['guess', guess] as const] : []),
    ...(why ? [['s', 'why'] as const] : []),
  ]
}

export const exerciseLink = (sitting: Sitting, id: string, screen: Screen = {}): string =>
  address(`/exercises/${id}`, [...carried(sitting), ...screenPairs(screen)])

export const listLink = (sitting: Sitting): string => address('/exercises', carried(sitting))

/** The trainer's page. */
export const lessonLink = (sitting: Sitting): string =>
  address('/exercises/lesson', carried({ ...sitting, present: false, done: '' }))

/** The hidden fields of a form that keeps the sitting. */
export const hiddenSitting = (sitting: Sitting): readonly Pair[] => carried(sitting)

export const recordLink = (sitting: Sitting): string =>
  address('/exercises/record', carried({ ...sitting, present: false }))

/** A handout of all exercises, or of one. */
export const handoutLink = (sitting: Sitting, answers: boolean, only?: string): string =>
  address('/exercises', [
    ...carried({ ...sitting, present: false, done: '' }),
    ['handout', '1'],
    ['answers', answers ? '1' : '0'],
    ...(only ? [['only', only] as const] : []),
  ])

/** The hidden fields of a form that stands for {@link exerciseLink}. */
export const hiddenFields = (sitting: Sitting, screen: Screen): readonly Pair[] => [
  ...carried(sitting),
  ...screenPairs(screen),
]
