import type { HazardControl } from '../../src/contract/register.ts'
import { ByRule, type Ink } from './ink.tsx'
import { answerWords, fromWords } from './words.ts'

export const answerLink = (ink: Pick<Ink, 'packed'>, question: string, back = '/register') =>
  `/register/answer?b=${ink.packed}&question=${encodeURIComponent(question)}&back=${encodeURIComponent(back)}`

/** The questions of a control as far as they were asked, each with its answer, its reason and who gave it. */
export function Questions({ control, ink }: { control: HazardControl; ink: Ink }) {
  return (
    <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
      <table class="questions">
        <thead>
          <tr>
            <th scope="col">Question</th>
            <th scope="col">Answer</th>
            <th scope="col">Because</th>
          </tr>
        </thead>
        <tbody>
          {control.questions.map((question, at) => (
            <tr>
              <th scope="row">
                {at + 1}. {question.question}
                <ByRule ink={ink} rule={question.questionRule} />
              </th>
              <td>
                {answerWords(question.answer)}
                {ink.paper ? null : (
                  <>
                    {' '}
                    <a class="why" href={answerLink(ink, question.id)}>
                      change<span class="unseen"> the answer to question {at + 1}</span>
                    </a>
                  </>
                )}
              </td>
              <td class="prose">
                {question.because}
                <ByRule ink={ink} rule={question.rule} />{' '}
                <span class="small">({fromWords(question.from)})</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
