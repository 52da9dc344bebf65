import type { Plan } from '../../src/contract/plan.ts'
import { Page } from '../page.tsx'
import { type Names, pieceWords } from '../words/contaminant.ts'

interface Props {
  readonly title: string
  readonly plan: Plan
  readonly names: Names
  readonly printedOn: string
}

/** The plan on paper: one line a piece, in the order drawn by lot. */
export function RecordSheetPage({ title, plan, names, printedOn }: Props) {
  const lies = plan.lies.length > 1
  return (
    <Page title={`Record sheet: ${title}`} packed={null} here="runs" print>
      <p class="over-title">Record sheet of a trial</p>
      <h1>{title}</h1>
      <p>{`${plan.label} at ${plan.point}: ${pieceWords(plan, names)}. ${plan.words}`}</p>
      {['Machine and number', 'Setting, locked', 'Operator'].map((head) => (
        <p class="name-line">
          {head} <span class="rule" /> Date <span class="rule short" />
        </p>
      ))}
      <p class="name-line">
        {`Clean packs run (${plan.clean.packs.toLocaleString('en')})`} <span class="rule short" />
        {` rejected (at most ${plan.clean.allowed})`} <span class="rule short" />
      </p>
      <ol class="small">
        {plan.steps.map((step) => (
          <li>{step}</li>
        ))}
      </ol>
      <table class="record">
        <caption>{`Pieces in order; place: ${plan.predicted.place}. Found = its pack lies in the bin.`}</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col" class="n">
              Size, mm
            </th>
            <th scope="col" class="n">
              Pack
            </th>
            {lies ? <th scope="col">Lie</th> : null}
            <th scope="col">Found</th>
            <th scope="col">Missed</th>
            <th scope="col">Signal</th>
            <th scope="col">Remark</th>
          </tr>
        </thead>
        <tbody>
          {plan.pieces.map((piece) => (
            <tr>
              <th scope="row">{piece.order}</th>
              <td class="n">{piece.sizeMm}</td>
              <td class="n">{piece.pack}</td>
              {lies ? <td>{piece.lie}</td> : null}
              <td>☐</td>
              <td>☐</td>
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      <p>{plan.clause}</p>
      <p class="name-line">
        Packs with pieces counted out <span class="rule short" /> and back <span class="rule short" />
      </p>
      <p class="versions">Printed on {printedOn}.</p>
    </Page>
  )
}
