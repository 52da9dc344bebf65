import type { Question } from '../../src/compare/questions.ts'
import type { ComparePageProps } from './props.ts'

/** What to ask each supplier, what is asked of all of them once; beside it what only the buyer can settle. */
export function QuestionsPart({ comparison, printedOn }: ComparePageProps) {
  const { sides, questions } = comparison
  const { toAll, toEach, ourselves } = questions
  return (
    <div class="two-lists">
      <section aria-labelledby="questions">
        <h2 id="questions">Ask the supplier</h2>
        {toAll.length > 0 ? (
          <>
            <h3>Of every machine here</h3>
            <List questions={toAll} />
          </>
        ) : null}
        {sides.map((side, at) => {
          const own = toEach[at] ?? []
          return own.length === 0 ? null : (
            <Of
              words={side.words}
              questions={own}
              folded={comparison.packs.length > 0 && printedOn === null}
            />
          )
        })}
        {toAll.length === 0 && toEach.every((own) => own.length === 0) ? (
          <p>Nothing is open: claims and machines are fully described.</p>
        ) : null}
      </section>
      {ourselves.length > 0 ? (
        <section aria-labelledby="homework">
          <h2 id="homework">Settle ourselves</h2>
          <p class="small">No supplier can answer these.</p>
          <List questions={ourselves} />
        </section>
      ) : null}
    </div>
  )
}

/** What is asked of one column; of two packs, where most columns ask alike, folded. */
function Of({
  words,
  questions,
  folded,
}: {
  words: string
  questions: readonly Question[]
  folded: boolean
}) {
  return folded ? (
    <details>
      <summary>
        {words}: {questions.length === 1 ? '1 question' : `${questions.length} questions`}
      </summary>
      <List questions={questions} />
    </details>
  ) : (
    <>
      <h3>{words}</h3>
      <List questions={questions} />
    </>
  )
}

function List({ questions }: { questions: readonly Question[] }) {
  return (
    <ol class="questions">
      {questions.map(({ ask, because }) => (
        <li>
          {ask} <span class="small">{because}</span>
        </li>
      ))}
    </ol>
  )
}
