import type { Context } from 'hono'
import { clockWords } from '../../../../views/exercises/clock-pages.tsx'
import { recordLink } from '../../../../views/exercises/links.ts'
import {
  type QuestionRow,
  RecordPage,
  type RecordProps,
  type ScoreRow,
} from '../../../../views/exercises/record-page.tsx'
import { JUDGED_WORDS } from '../../../../views/exercises/reveal-page.tsx'
import { handsWords } from '../../../../views/exercises/tally.tsx'
import { roomScore } from '../../../exercises/hands.ts'
import { guessWords, judge, rightWords } from '../../../exercises/judge.ts'
import { added, reaches, scoreOfExercise } from '../../../exercises/score.ts'
import type { Advisor } from '../../advisor.ts'
import { refuse } from '../../asked/refusal.ts'
import { showPage } from '../../show-page.ts'
import { type AskedSitting, askedSitting, handsOf } from '../../shown/exercise-sitting.ts'
import { dayIn, today } from '../../today.ts'

const MOST_NAME = 80
const MOST_PEOPLE = 60
const USUAL_PASS = 80
const USUAL_MONTHS = 12

/** A record of one person or of a class: scores worked out anew, pass mark, statement and the day to train again. */
export const exerciseRecordPage = (advisor: Advisor) => async (c: Context) => {
  const asked = await askedSitting(c, advisor)
  const named = (field: string) => (c.req.query(field) ?? '').trim().slice(0, MOST_NAME)
  const whole = (field: string, words: string, usual: number, most: number) => {
    const text = (c.req.query(field) ?? '').trim()
    if (text === '') return usual
    if (!/^\d+$/.test(text) || Number(text) < 1 || Number(text) > most)
      refuse([{ path: '', message: `${words} must be a whole number from 1 to ${most}` }])
    return Number(text)
  }
  const entered = {
    name: named('name'),
    trainer: named('trainer'),
    pass: whole('pass', 'The pass mark', USUAL_PASS, 100),
    months: whole('months', 'The months until training again', USUAL_MONTHS, 60),
    people: (c.req.query('people') ?? '')
      .split(/\r?\n/)
      .map((line) => line.trim().slice(0, MOST_NAME))
      .filter(Boolean)
      .slice(0, MOST_PEOPLE),
    forClass: c.req.query('class') === '1',
  }
  const { scores, questions, total } = recordOf(asked)
  const props: Omit<RecordProps, 'printLink'> = {
    ...entered,
    sitting: { ...asked.sitting, present: false },
    scores,
    questions,
    total,
    reached: reaches(total, entered.pass),
    room: handsOf(asked),
    today: today(),
    again: dayIn(entered.months),
    print: c.req.query('print') === '1',
  }
  return showPage(c, <RecordPage {...props} printLink={paperLink(props)} />)
}

function paperLink({
  sitting,
  name,
  trainer,
  pass,
  months,
  people,
  forClass,
}: Omit<RecordProps, 'printLink'>) {
  const base = recordLink(sitting)
  const more = new URLSearchParams({
    name,
    trainer,
    pass: String(pass),
    months: String(months),
    ...(people.length > 0 ? { people: people.join('\n') } : {}),
    ...(forClass ? { class: '1' } : {}),
    print: '1',
  })
  return `${base}${base.includes('?') ? '&' : '?'}${more}`
}

function recordOf({ done, find, order, voice }: AskedSitting) {
  const known = done.flatMap((one) => {
    const exercise = find(one.id)
    return exercise ? [{ ...one, exercise, questions: exercise.questions(voice) }] : []
  })
  const made = known.map(({ exercise, questions, guesses, seconds }): ScoreRow => {
    return {
      exercise: `${exercise.title(voice)}${seconds === null ? '' : `, in ${clockWords(seconds)}`}`,
      teaches: exercise.teaches(voice),
      score: scoreOfExercise(questions, guesses),
      hands: roomScore([{ questions, guesses }]),
    }
  })
  const rows = known.flatMap(({ exercise, questions, guesses }) =>
    questions.map((question, at): QuestionRow => {
      const guess = guesses[at] ?? null
      const judged = judge(question, guess)
      const hands = handsWords(question, guess)
      return {
        exercise: exercise.title(voice),
        question: question.ask,
        prediction: hands === null ? guessWords(question, guess) : `hands: ${hands}`,
        result:
          judged === 'right'
            ? JUDGED_WORDS.right
            : hands === null
              ? `${JUDGED_WORDS[judged]}: ${rightWords(question)}`
              : rightWords(question),
      }
    }),
  )
  const blank = order.map(
    (exercise): ScoreRow => ({
      exercise: exercise.title(voice),
      teaches: exercise.teaches(voice),
      score: { right: 0, made: 0 },
      hands: { right: 0, all: 0 },
    }),
  )
  return {
    scores: made.length > 0 ? made : blank,
    questions: rows,
    total: added(made.map(({ score }) => score)),
  }
}
