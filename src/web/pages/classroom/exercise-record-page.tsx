import type { Context } from 'hono'
import { clockWords } from '../../../../views/exercises/clock-pages.tsx'
import { recordLink } from '../../../../views/exercises/links.ts'
import { RecordPage, type RecordRow } from '../../../../views/exercises/record-page.tsx'
import { JUDGED_WORDS } from '../../../../views/exercises/reveal-page.tsx'
import { guessWords, judge, rightWords } from '../../../exercises/judge.ts'
import { EXERCISES } from '../../../exercises/list.ts'
import type { Advisor } from '../../advisor.ts'
import { showPage } from '../../show-page.ts'
import { type AskedSitting, askedSitting } from '../../shown/exercise-sitting.ts'
import { today } from '../../today.ts'

const MOST_NAME = 80

/** The predictions of a sitting with their results, worked out anew; empty lines where there are none. */
export const exerciseRecordPage = (advisor: Advisor) => async (c: Context) => {
  const asked = await askedSitting(c, advisor)
  const { rows, right, predicted } = rowsOf(asked)
  const named = (field: string) => (c.req.query(field) ?? '').trim().slice(0, MOST_NAME)
  const [name, trainer] = [named('name'), named('trainer')]
  const base = recordLink(asked.sitting)
  const more = `name=${encodeURIComponent(name)}&trainer=${encodeURIComponent(trainer)}&print=1`
  return showPage(
    c,
    <RecordPage
      sitting={{ ...asked.sitting, present: false }}
      rows={rows}
      name={name}
      trainer={trainer}
      right={right}
      predicted={predicted}
      today={today()}
      print={c.req.query('print') === '1'}
      printLink={`${base}${base.includes('?') ? '&' : '?'}${more}`}
    />,
  )
}

function rowsOf({ done, own, find, voice }: AskedSitting) {
  let right = 0
  let predicted = 0
  const made = done.flatMap(({ id, guesses, seconds }): RecordRow[] => {
    const exercise = find(id)
    if (!exercise) return []
    return exercise.questions(voice).map((question, at) => {
      const guess = guesses[at] ?? null
      const judged = judge(question, guess)
      if (judged !== 'none') predicted++
      if (judged === 'right') right++
      const time = seconds !== null && at === 0 ? `, in ${clockWords(seconds)}` : ''
      return {
        exercise: `${exercise.title(voice)}${time}`,
        question: question.ask,
        prediction: guessWords(question, guess),
        result: judged === 'right' ? JUDGED_WORDS.right : `${JUDGED_WORDS[judged]}: ${rightWords(question)}`,
      }
    })
  })
  const blank = [...own, ...EXERCISES].map((exercise) => ({
    exercise: exercise.title(voice),
    question: '',
    prediction: '',
    result: '',
  }))
  return { rows: made.length > 0 ? made : blank, right, predicted }
}
