import { ErrorSummary } from '../brief/error-summary.tsx'
import { Page } from '../page.tsx'
import { addedWords, basisWords } from './added-words.ts'
import { ChooseSides } from './choose.tsx'
import { Clauses } from './clauses.tsx'
import { Columns } from './columns.tsx'
import { Costs } from './costs.tsx'
import { OtherPackForm } from './other-pack.tsx'
import { Packs } from './packs.tsx'
import type { ComparePageProps } from './props.ts'
import { QuestionsPart } from './questions.tsx'

/** Machines or packs side by side: the answer, what differs, what it costs, what to ask, what to order. */
export function ComparePage(props: ComparePageProps) {
  const { comparison, title, packed, query, printedOn, otherPack } = props
  const print = printedOn !== null
  const problems = [...comparison.problems, ...otherPack.problems]
  const twoPacks = comparison.laid.length === 2
  const name = twoPacks ? 'Compare packs' : 'Compare quotes'
  return (
    <Page
      title={`${problems.length > 0 ? 'Error: ' : ''}${name}: ${title}`}
      packed={packed}
      here="compare"
      print={print}
    >
      {problems.length > 0 ? <ErrorSummary problems={problems} /> : null}
      <p class="over-title">{name}</p>
      <h1>{title}</h1>
      {twoPacks ? <Packs {...props} /> : <Machines {...props} />}
      {print ? null : (
        <ul class="acts">
          <li>
            <a href={`/compare?${query}&print=1`}>Print</a>
          </li>
          <li>
            <a href={`/advice?b=${packed}`}>The whole advice</a>
          </li>
          {twoPacks ? (
            <li>
              <a href={`/compare?b=${packed}`}>Pack A alone</a>
            </li>
          ) : null}
        </ul>
      )}
      {print ? null : <ChooseSides {...props} />}
      {comparison.sides.length > 1 ? <Columns {...props} /> : null}
      <Costs {...props} />
      <QuestionsPart {...props} />
      <Clauses {...props} />
      {print ? null : <OtherPackForm {...props} />}
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

/** Whether the dearer machine is needed, and by what it is the dearer. */
function Machines({ comparison, piecesShort, packed, query }: ComparePageProps) {
  const { sides, passedOver } = comparison
  if (comparison.sides.length < 2)
    return (
      <p class="answer">
        Only one machine of this brief stands here: nothing lies beside it yet. Add another machine or a
        claimed size to the <a href={`/brief?b=${packed}`}>brief</a>.
      </p>
    )
  const said = [...new Set(comparison.added.map((added) => addedWords(added, piecesShort)))]
  return (
    <>
      {said.map((words) => (
        <p class="answer">{words}</p>
      ))}
      <p class="small">
        {basisWords(comparison)}
        {passedOver ? (
          <>
            {' '}
            The advice puts neither of these but {passedOver.words}:{' '}
            <a
              href={`/compare?${query.replace(/&x=[^&]*/g, '')}${[...sides.slice(0, 2), passedOver].map(({ key }) => `&x=${encodeURIComponent(key)}`).join('')}`}
            >
              compare that too
            </a>
            .
          </>
        ) : null}
      </p>
    </>
  )
}
