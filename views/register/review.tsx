import type { Register } from '../../src/contract/register.ts'
import { aboutWords } from './about-words.ts'
import { ByRule, type Ink, Sentences } from './ink.tsx'
import { answerLink } from './questions.tsx'

/** Who answers for the register, which issue it is: as people said. */
export function Plant({ register, ink }: { register: Register; ink: Ink }) {
  return (
    <dl class="record-facts">
      {register.plant.map(({ id, label, value, rule }) => (
        <>
          <dt>{label}</dt>
          <dd>
            {value === '' ? (ink.paper ? '........................................' : 'not stated') : value}
            <ByRule ink={ink} rule={rule} />
            {ink.paper ? null : (
              <>
                {' '}
                <a class="why" href={answerLink(ink, id)}>
                  {value === '' ? 'enter' : 'change'}
                  <span class="unseen"> {label.toLowerCase()}</span>
                </a>
              </>
            )}
          </dd>
        </>
      ))}
    </dl>
  )
}

/** The house's own ten questions, and where in the report each is answered at length. */
const TEN_QUESTIONS = 'ten-questions-of-an-auditor'
const WHERE = [
  ['hazards', 'hazard register'],
  ['hazards', 'the questions behind each class'],
  ['predicted', 'what the machines are predicted to find'],
  ['hazards', 'hazard register'],
  ['checks', 'check plan'],
  ['checks', 'check plan'],
  ['checks', 'check plan'],
  ['hazards', 'hazard register'],
  ['signatures', 'versions and signatures'],
  ['changed', 'what changed'],
] as const

/** What asks for validation anew, the duties of the market, and an auditor's ten questions. */
export function Review({ register, ink }: { register: Register; ink: Ink }) {
  return (
    <>
      <section aria-labelledby="revalidate">
        <h2 id="revalidate">What asks for validation anew</h2>
        <ul>
          {register.revalidate.map(({ text, rule, sources }, at, all) => (
            <li>
              {text}
              {all[at - 1]?.rule === rule ? null : <ByRule ink={ink} rule={rule} sources={sources} />}
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="law">
        <h2 id="law">Law, guidance and standards of the market</h2>
        <p>Not legal advice. Each with where it stands and when it was read, or that it was not.</p>
        <Sentences ink={ink} sentences={register.law} />
      </section>
      <section aria-labelledby="auditor">
        <h2 id="auditor">Ten questions an auditor asks</h2>
        <ol class="auditor">
          {register.auditor.map(({ question, answer, rule }, at, all) => (
            <li>
              <strong>{question}</strong> {answer}
              {all[at - 1]?.rule === rule ? null : <ByRule ink={ink} rule={rule} />}
              {ink.paper && rule === TEN_QUESTIONS ? (
                <>
                  {' '}
                  <a href={`#${WHERE[at]![0]}`}>See: {WHERE[at]![1]}.</a>
                </>
              ) : null}
            </li>
          ))}
        </ol>
      </section>
    </>
  )
}

/** Answers of people that overrule what was filled in, both printed; answers that could not be read. */
export function Overruled({ register, ink }: { register: Register; ink: Ink }) {
  const { overruled, unread } = register
  if (overruled.length + unread.length === 0) return null
  return (
    <section aria-labelledby="overruled">
      <h2 id="overruled">What people changed</h2>
      {unread.map(({ question, message }) => (
        <p class="error">
          {aboutWords(question, register)}: {message}. What was filled in holds.
        </p>
      ))}
      <section class="scroll" tabindex={0} aria-label="Table that can be scrolled">
        <table class="stacks">
          <thead>
            <tr>
              <th scope="col">About</th>
              <th scope="col">Filled in</th>
              <th scope="col">Set</th>
              <th scope="col">Reason</th>
            </tr>
          </thead>
          <tbody>
            {overruled.map(({ question, filled, answer, because }) => (
              <tr>
                <th scope="row">
                  {ink.paper ? (
                    aboutWords(question, register)
                  ) : (
                    <a href={answerLink(ink, question)}>{aboutWords(question, register)}</a>
                  )}
                </th>
                <td data-head="Filled in">{filled === '' ? 'nothing' : filled}</td>
                <td class="prose" data-head="Set">
                  {answer}
                </td>
                <td class="prose" data-head="Reason">
                  {because}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  )
}
