import type { ComparePageProps } from './props.ts'

/** What to ask each supplier, made from what is unknown, assumed or not to be promised. */
export function QuestionsPart({ comparison }: ComparePageProps) {
  return (
    <section aria-labelledby="questions">
      <h2 id="questions">Questions to the supplier</h2>
      {comparison.questions.map(({ side, questions }) => (
        <>
          <h3>{side.words}</h3>
          {questions.length === 0 ? (
            <p>Nothing is open: quote and machine are fully described.</p>
          ) : (
            <ol class="questions">
              {questions.map(({ ask, because }) => (
                <li>
                  {ask} <span class="small">{because}</span>
                </li>
              ))}
            </ol>
          )}
        </>
      ))}
      {comparison.ourselves.length > 0 ? (
        <>
          <h3>To find out ourselves</h3>
          <ul class="questions">
            {comparison.ourselves.map(({ ask, because }) => (
              <li>
                {ask} <span class="small">{because}</span>
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </section>
  )
}
