import { Page } from '../page.tsx'

export interface AnswerPageProps {
  readonly packed: string
  readonly question: string
  readonly words: string
  /** What was filled in, in words. */
  readonly filled: string
  readonly answer: string
  readonly because: string
  /** A closed list to choose from; empty where anything may be written. */
  readonly choices: readonly { readonly value: string; readonly words: string }[]
  readonly hint: string
  readonly back: string
  readonly problem: string
}

/** One question of the register: what was filled in, and a person's own answer with its reason. */
export function AnswerPage(props: AnswerPageProps) {
  const { packed, question, words, filled, answer, because, choices, hint, back, problem } = props
  return (
    <Page title={`${problem ? 'Error: ' : ''}Answer`} packed={packed} here="register">
      <h1>Your answer</h1>
      <p class="standfirst">{words}</p>
      <p>Filled in: {filled === '' ? 'nothing' : filled}. Both are printed, with your reason.</p>
      <form method="post" action="/register/answer" class="answer-form">
        <input type="hidden" name="b" value={packed} />
        <input type="hidden" name="question" value={question} />
        <input type="hidden" name="back" value={back} />
        {problem ? (
          <p class="error" id="error-answer">
            <span class="unseen">Error: </span>
            {problem}
          </p>
        ) : null}
        <div class="field">
          <label for="answer">Answer</label>
          {hint ? (
            <p class="hint" id="hint-answer">
              {hint}
            </p>
          ) : null}
          {choices.length > 0 ? (
            <select id="answer" name="answer">
              {choices.map(({ value, words: choice }) => (
                <option value={value} {...(value === answer ? { selected: true } : {})}>
                  {choice}
                </option>
              ))}
            </select>
          ) : (
            <input
              type="text"
              id="answer"
              name="answer"
              value={answer}
              autocomplete="off"
              {...(hint ? { 'aria-describedby': 'hint-answer' } : {})}
            />
          )}
        </div>
        <div class="field wide">
          <label for="because">Reason of the answer</label>
          <textarea id="because" name="because" rows={3}>
            {because}
          </textarea>
        </div>
        <button type="submit" name="do" value="set">
          Keep the answer
        </button>{' '}
        <button type="submit" class="quiet" name="do" value="clear">
          Take the answer back
        </button>
      </form>
      <p>
        <a href={`${back}?b=${packed}`}>Back without a change</a>
      </p>
    </Page>
  )
}
