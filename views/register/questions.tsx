import type { Hazard, Register, RegisterQuestion } from '../../src/contract/register.ts'
import { ByRule, type Ink } from './ink.tsx'
import { answerWords, fromWords } from './words.ts'

export const answerLink = (ink: Pick<Ink, 'packed'>, question: string, back = '/register') =>
  `/register/answer?b=${ink.packed}&question=${encodeURIComponent(question)}&back=${encodeURIComponent(back)}`

/** The eight questions in two or three words, where their full wording stands once elsewhere. */
export const SHORT = [
  'It counts without this control',
  'Programmes hold it alone',
  'Seen and taken out',
  'A later step holds it',
  'If it fails',
  'A limit, and shown',
  'A failure seen in time',
  'What is done is settled',
] as const

/** The questions with their full wording, once for the register. */
export function EightQuestions({ register, ink }: { register: Register; ink: Ink }) {
  const all = register.hazards.flatMap(({ controls }) => controls)
  const longest = all.reduce<RegisterQuestion[]>(
    (most, { questions }) => (questions.length > most.length ? questions : most),
    [],
  )
  if (longest.length === 0) return null
  return (
    <section>
      <h3>The questions behind each class</h3>
      <ol>
        {longest.map(({ question, questionRule }, at) => (
          <li>
            <strong>{SHORT[at]}.</strong> {question}
            <ByRule ink={ink} rule={questionRule} />
          </li>
        ))}
      </ol>
    </section>
  )
}

/** The questions of a hazard down, its controls across: answer, reason and who gave it; said once where all agree. */
export function Questions({ hazard, ink }: { hazard: Hazard; ink: Ink }) {
  const { controls } = hazard
  const asked = controls.reduce<readonly RegisterQuestion[]>(
    (most, { questions }) => (questions.length > most.length ? questions : most),
    [],
  )
  if (asked.length === 0) return null
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table class="questions">
        <caption>Answers behind the classes (–: not asked, the class was settled before)</caption>
        <thead>
          <tr>
            <th scope="col">Question</th>
            {controls.map(({ label, point }) => (
              <th scope="col">
                {label}, {point}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {asked.map((question, at) => (
            <tr>
              <th scope="row">
                {at + 1}.{' '}
                {ink.paper ? (
                  SHORT[at]
                ) : (
                  <>
                    {question.question}
                    <ByRule ink={ink} rule={question.questionRule} />
                  </>
                )}
              </th>
              <Answers answers={controls.map(({ questions }) => questions[at] ?? null)} at={at} ink={ink} />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function Answers({
  answers,
  at,
  ink,
}: {
  answers: readonly (RegisterQuestion | null)[]
  at: number
  ink: Ink
}) {
  const [first] = answers
  const alike =
    answers.length > 1 &&
    answers.every((one) => one && first && one.answer === first.answer && one.because === first.because)
  if (alike)
    return (
      <td class="prose" colspan={answers.length}>
        <Answer answer={first!} ink={ink} />
        {answers.map((one) => (
          <Change id={one!.id} at={at} ink={ink} />
        ))}
      </td>
    )
  return (
    <>
      {answers.map((one) => (
        <td class="prose">
          {one === null ? (
            '–'
          ) : (
            <>
              <Answer answer={one} ink={ink} />
              <Change id={one.id} at={at} ink={ink} />
            </>
          )}
        </td>
      ))}
    </>
  )
}

function Answer({ answer, ink }: { answer: RegisterQuestion; ink: Ink }) {
  return (
    <>
      <strong>{answerWords(answer.answer)}.</strong> {answer.because}
      <ByRule ink={ink} rule={answer.rule} />
      {answer.from === 'computed' ? null : <span class="small"> ({fromWords(answer.from)})</span>}
    </>
  )
}

function Change({ id, at, ink }: { id: string; at: number; ink: Ink }) {
  if (ink.paper) return null
  return (
    <>
      {' '}
      <a class="why" href={answerLink(ink, id)}>
        change
        <span class="unseen">
          {' '}
          the answer to question {at + 1} ({id})
        </span>
      </a>
    </>
  )
}
