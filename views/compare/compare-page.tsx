import { ErrorSummary } from '../brief/error-summary.tsx'
import { Page } from '../page.tsx'
import { AddedPart } from './added.tsx'
import { Clauses } from './clauses.tsx'
import { Costs } from './costs.tsx'
import { DifferencesPart } from './differences.tsx'
import { Picks } from './picks.tsx'
import type { ComparePageProps } from './props.ts'
import { QuestionsPart } from './questions.tsx'

/** Two or three quotes side by side: the answer, what differs, what it costs, what to ask, what to order. */
export function ComparePage(props: ComparePageProps) {
  const { comparison, title, packed, query, printedOn } = props
  const print = printedOn !== null
  const { problems } = comparison
  return (
    <Page
      title={`${problems.length > 0 ? 'Error: ' : ''}Compare quotes: ${title}`}
      packed={packed}
      here="compare"
      print={print}
    >
      {problems.length > 0 ? <ErrorSummary problems={problems} /> : null}
      <p class="over-title">Compare quotes</p>
      <h1>{title}</h1>
      {comparison.sides.length > 1 ? <AddedPart {...props} /> : <Alone packed={packed} />}
      {print ? null : (
        <ul class="acts">
          <li>
            <a href={`/compare?${query}&print=1`}>For paper</a>
          </li>
          <li>
            <a href={`/advice?b=${packed}`}>The whole advice</a>
          </li>
        </ul>
      )}
      {print ? null : <Picks {...props} />}
      {comparison.sides.length > 1 ? <DifferencesPart {...props} /> : null}
      <Costs {...props} />
      <QuestionsPart {...props} />
      <Clauses {...props} />
      <p class="versions">
        Sizes are computed, not measured: only a test on the real product decides.
        {comparison.all.some(({ option }) => option.family === 'coil')
          ? ' A metal detector here is a metal detector (balanced coil).'
          : ''}
        {printedOn === null ? '' : ` Printed on ${printedOn}.`}
      </p>
    </Page>
  )
}

function Alone({ packed }: { packed: string }) {
  return (
    <p class="answer">
      Only one machine of this brief stands here: nothing lies beside it yet. Add another machine or a quoted
      size to the <a href={`/brief?b=${packed}`}>brief</a>.
    </p>
  )
}
