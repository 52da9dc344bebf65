import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { AnswerPage } from '../../../../views/register/answer-page.tsx'
import { parseBrief } from '../../../brief/index.ts'
import { enteredOf } from '../../../brief/usual/usual-contaminants.ts'
import type { Brief } from '../../../contract/index.ts'
import type { Advisor } from '../../advisor.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { askedQuestion } from '../../asked/asked-question.ts'
import { formAnswers } from '../../asked/form-answers.ts'
import { packBrief, unpackBrief } from '../../asked/packed-brief.ts'
import { showPage } from '../../show-page.ts'

const BACKS = ['/register', '/checks', '/report']
const backTo = (asked: string | undefined) => (asked && BACKS.includes(asked) ? asked : '/register')

/** The page on which a person answers one question of the register. */
export const answerPage = (advisor: Advisor) => async (c: Context) => {
  const { brief } = goodBrief(c)
  return show(c, advisor, brief, c.req.query('question') ?? '', backTo(c.req.query('back')))
}

/** The answer, kept in the brief that travels on in the address; or the page again with what is wrong. */
export const keepAnswer = (advisor: Advisor) => async (c: Context) => {
  const sent = await formAnswers(c)
  const { brief } = sentBrief(sent.b)
  const { question = '', answer = '', because = '' } = sent
  const others = (brief.given.answers ?? []).filter((one) => one.question !== question)
  const kept =
    sent.do === 'clear' ? others : [...others, { question, answer: answer.trim(), because: because.trim() }]
  const next = parseBrief({
    ...enteredOf(brief),
    ...(kept.length > 0 ? { answers: kept } : { answers: undefined }),
  })
  const back = backTo(sent.back)
  if (!next.ok) {
    const message = next.problems[0]?.message ?? 'it cannot be kept'
    return show(c, advisor, brief, question, back, { answer, because, problem: message })
  }
  const { register } = await advisor.quick(next.brief)
  const unread = register.unread.find((one) => one.question === question)
  if (unread) return show(c, advisor, brief, question, back, { answer, because, problem: unread.message })
  return c.redirect(`${back}?b=${packBrief(withoutEmpty(enteredOf(next.brief)))}`, 303)
}

/** An assumption confirmed by a person, kept in the brief. */
export const keepConfirmation = (advisor: Advisor) => async (c: Context) => {
  const { b, what = '', by = '', date = '' } = await formAnswers(c)
  const { brief } = sentBrief(b)
  const { register } = await advisor.quick(brief)
  if (what !== '' && !register.confirm.some(({ id }) => id === what))
    throw new HTTPException(422, { message: 'The register has no open assumption of that name.' })
  const others = (brief.given.confirmed ?? []).filter((one) => one.what !== what)
  const next = parseBrief({
    ...enteredOf(brief),
    confirmed: [...others, { what, by: by.trim(), date: date.trim() }],
  })
  if (!next.ok) throw new HTTPException(422, { message: `${next.problems[0]?.message}.` })
  return c.redirect(`/register?b=${packBrief(enteredOf(next.brief))}#confirm`, 303)
}

const withoutEmpty = (entered: ReturnType<typeof enteredOf>) => {
  const { answers, ...rest } = entered
  return answers && answers.length > 0 ? entered : rest
}

function sentBrief(packed: string | undefined): { brief: Brief } {
  const read = unpackBrief(packed ?? '')
  const parsed = 'brief' in read ? parseBrief(read.brief) : null
  if (!parsed?.ok)
    throw new HTTPException(400, { message: 'The form carries no readable brief. Go back and try again.' })
  return { brief: parsed.brief }
}

async function show(
  c: Context,
  advisor: Advisor,
  brief: Brief,
  question: string,
  back: string,
  sent: { answer: string; because: string; problem: string } | null = null,
) {
  const advice = await advisor.quick(brief)
  const asked = askedQuestion(brief, advice, question)
  if (!asked) throw new HTTPException(404, { message: 'The register asks no such question of this brief.' })
  const given = brief.answers.find((one) => one.question === question)
  return showPage(
    c,
    <AnswerPage
      packed={packBrief(enteredOf(brief))}
      question={question}
      {...asked}
      answer={sent?.answer ?? given?.answer ?? asked.chosen}
      because={sent?.because ?? given?.because ?? ''}
      back={back}
      problem={sent?.problem ?? ''}
    />,
    sent ? 422 : 200,
  )
}
