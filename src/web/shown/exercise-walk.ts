import type { AskPageProps } from '../../../views/exercises/ask-page.tsx'
import type { StartPage, SummaryPageProps } from '../../../views/exercises/clock-pages.tsx'
import { exerciseLink, listLink, type Screen, type Sitting } from '../../../views/exercises/links.ts'
import type { RevealPageProps } from '../../../views/exercises/reveal-page.tsx'
import type { Exercise, Question } from '../../exercises/exercise.ts'
import { MOST_HANDS, readHands, votable, writeHands } from '../../exercises/hands.ts'
import { NO_GUESS, readNumber } from '../../exercises/judge.ts'
import { DRILL_LINE } from '../../exercises/proof/failed-check.ts'
import { readGuesses, withDone, writeDone } from '../../exercises/sitting.ts'
import { type AskedSitting, handsOf } from './exercise-sitting.ts'

/** Which screen an address asks for, with all it shows. */
export type Walk =
  | { readonly kind: 'elsewhere'; readonly screen: Screen }
  | { readonly kind: 'start'; readonly props: Parameters<typeof StartPage>[0] }
  | { readonly kind: 'ask'; readonly props: AskPageProps }
  | { readonly kind: 'reveal'; readonly props: RevealPageProps }
  | { readonly kind: 'summary'; readonly props: SummaryPageProps }

type Query = Readonly<Record<string, string | undefined>>

/** What an address asks for, with the hands that were typed. */
export interface Asked {
  readonly query: Query
  readonly hands: readonly string[]
}

/** Hands made fit to travel; nothing typed is no prediction. */
function readTypedHands(
  question: Question,
  hands: readonly string[],
): { guess: string } | { problem: string } {
  if (hands.every((text) => text.trim() === '')) return { guess: NO_GUESS }
  const counts = votable(question).map((_, at) => Number((hands[at] ?? '').trim()))
  return counts.every((count) => Number.isInteger(count) && count >= 0 && count <= MOST_HANDS)
    ? { guess: writeHands(counts) }
    : { problem: `Give whole numbers from 0 to ${MOST_HANDS}` }
}

/** A prediction made fit to travel: a choice as it is, a number bare; or what is wrong with it. */
function readGuess({ answer }: Question, typed: string): { guess: string } | { problem: string } {
  if (typed === NO_GUESS || readHands(typed)) return { guess: typed }
  if (answer.kind === 'choice') {
    return answer.choices.some(({ id }) => id === typed)
      ? { guess: typed }
      : { problem: 'Choose one of the answers' }
  }
  const reading = readNumber(typed)
  if (!reading.ok) return { problem: reading.because.charAt(0).toUpperCase() + reading.because.slice(1) }
  return reading.value >= 0
    ? { guess: String(Number(reading.value.toPrecision(6))) }
    : { problem: 'Give a number from 0 up' }
}

const wholeNumber = (text: string | undefined, most: number): number | null => {
  const value = Number(text ?? Number.NaN)
  return Number.isInteger(value) && value > 0 && value <= most ? value : null
}

/** Where the way leads after the last question: the next exercise, the record of predictions grown by this one. */
function onward(
  exercise: Exercise,
  { sitting, done, order }: AskedSitting,
  guesses: readonly string[],
  seconds: number | null,
) {
  const at = order.indexOf(exercise)
  const next = at < 0 ? undefined : order[at + 1]
  const later: Sitting = {
    ...sitting,
    done: writeDone(withDone(done, { id: exercise.id, guesses, seconds })),
  }
  return {
    sitting: later,
    next: next
      ? { href: exerciseLink(later, next.id), words: 'Next exercise' }
      : { href: listLink(later), words: 'Back to all exercises' },
  }
}

/** The screen an address asks for. `now`: ms since 1970, the server's clock. */
export function walkThrough(
  exercise: Exercise,
  asked: AskedSitting,
  { query, hands }: Asked,
  now: number,
): Walk {
  const { sitting, voice } = asked
  const questions = exercise.questions(voice)
  const number = wholeNumber(query.q, questions.length) ?? 1
  const question = questions[number - 1]!
  const earlier = readGuesses(query.g)
  const typed = query.guess
  const base = { sitting, id: exercise.id, title: exercise.title(voice) }
  if (exercise.timed) return againstTheClock(exercise, asked, query, now)

  const guesses = Array.from({ length: number - 1 }, (_, at) => earlier[at] ?? NO_GUESS)
  const screen: Screen = { question: number, guesses: guesses.join('_') }
  const counted = hands.length > 0 ? readTypedHands(question, hands) : null
  if (counted && 'guess' in counted) return { kind: 'elsewhere', screen: { ...screen, ...counted } }
  const read = counted ?? (typed === undefined ? null : readGuess(question, typed))
  if (read === null || 'problem' in read) {
    const before = guesses.slice(0, -1).join('_')
    return {
      kind: 'ask',
      props: {
        ...base,
        question,
        number,
        of: questions.length,
        screen,
        previous:
          number > 1
            ? exerciseLink(sitting, exercise.id, {
                question: number - 1,
                guesses: before,
                guess: guesses.at(-1)!,
                why: sitting.present,
              })
            : null,
        timed: false,
        typed: typed ?? '',
        hands,
        problem: read?.problem ?? null,
      },
    }
  }
  const { guess } = read
  const all = [...guesses, guess]
  const last = number === questions.length
  const way = last ? onward(exercise, asked, all, null) : null
  const why = query.s === 'why'
  const answer = exerciseLink(sitting, exercise.id, { ...screen, guess })
  const forward = way?.next ?? {
    href: exerciseLink(sitting, exercise.id, { question: number + 1, guesses: all.join('_') }),
    words: 'Next question',
  }
  return {
    kind: 'reveal',
    props: {
      ...base,
      sitting: way?.sitting ?? sitting,
      question,
      number,
      of: questions.length,
      guess,
      rests: exercise.rests,
      why,
      takeHome: last ? exercise.teaches(voice) : null,
      room: handsOf({
        ...asked,
        done: withDone(asked.done, { id: exercise.id, guesses: all, seconds: null }),
      }),
      previous: why ? answer : exerciseLink(sitting, exercise.id, screen),
      next: sitting.present && !why ? { href: `${answer}&s=why`, words: 'Why' } : forward,
    },
  }
}

/** A timed exercise: start, questions in a row, summary, then its answers one by one. */
function againstTheClock(exercise: Exercise, asked: AskedSitting, query: Query, now: number): Walk {
  const { sitting, voice } = asked
  const questions = exercise.questions(voice)
  const base = { sitting, id: exercise.id, title: exercise.title(voice), about: exercise.about(voice) }
  if (query.start === '1') return { kind: 'elsewhere', screen: { began: now } }
  const began = wholeNumber(query.began, now)
  if (began === null) return { kind: 'start', props: { ...base, of: questions.length } }
  const earlier = readGuesses(query.g).slice(0, questions.length)
  const ended = wholeNumber(query.ended, now)
  if (ended !== null && ended >= began && earlier.length === questions.length) {
    return afterTheClock(exercise, asked, query, { began, ended, guesses: earlier })
  }
  const number = Math.min(earlier.length + 1, questions.length)
  const question = questions[number - 1]!
  const read = query.guess === undefined ? null : readGuess(question, query.guess)
  if (read !== null && !('problem' in read)) {
    const all = [...earlier.slice(0, number - 1), read.guess]
    const finished = all.length === questions.length
    return {
      kind: 'elsewhere',
      screen: { guesses: all.join('_'), began, ...(finished ? { ended: Math.max(now, began + 1) } : {}) },
    }
  }
  return {
    kind: 'ask',
    props: {
      ...base,
      question,
      number,
      of: questions.length,
      screen: { guesses: earlier.join('_'), began },
      previous: null,
      timed: true,
      typed: query.guess ?? '',
      hands: [],
      problem: read?.problem ?? null,
    },
  }
}

function afterTheClock(
  exercise: Exercise,
  asked: AskedSitting,
  query: Query,
  clock: { readonly began: number; readonly ended: number; readonly guesses: readonly string[] },
): Walk {
  const { sitting, voice, brief } = asked
  const questions = exercise.questions(voice)
  const { began, ended, guesses } = clock
  const seconds = Math.round((ended - began) / 1000)
  const way = onward(exercise, asked, guesses, seconds)
  const base = { id: exercise.id, title: exercise.title(voice) }
  const at = (question: number, why: boolean) =>
    exerciseLink(sitting, exercise.id, {
      question,
      guesses: guesses.join('_'),
      began,
      ended,
      guess: guesses[question - 1]!,
      why,
    })
  const number = wholeNumber(query.q, questions.length)
  if (query.guess === undefined) {
    const pace = brief?.points.findLast(({ packsPerMin }) => packsPerMin !== null)?.packsPerMin
    return {
      kind: 'summary',
      props: {
        ...base,
        sitting: way.sitting,
        about: exercise.about(voice),
        questions,
        guesses,
        seconds,
        packsGoneBy:
          ((exercise.id.startsWith('own-') ? pace : null) ?? DRILL_LINE.packsPerMin) * (seconds / 60),
        answers: at(1, false),
        next: way.next,
      },
    }
  }
  const shown = number ?? 1
  const why = query.s === 'why'
  const summary = exerciseLink(sitting, exercise.id, { guesses: guesses.join('_'), began, ended })
  return {
    kind: 'reveal',
    props: {
      ...base,
      sitting: way.sitting,
      question: questions[shown - 1]!,
      number: shown,
      of: questions.length,
      guess: guesses[shown - 1]!,
      rests: exercise.rests,
      why,
      takeHome: shown === questions.length ? exercise.teaches(voice) : null,
      room: handsOf(asked),
      previous: why ? at(shown, false) : shown > 1 ? at(shown - 1, sitting.present) : summary,
      next:
        sitting.present && !why
          ? { href: at(shown, true), words: 'Why' }
          : shown < questions.length
            ? { href: at(shown + 1, false), words: 'Next answer' }
            : way.next,
    },
  }
}
