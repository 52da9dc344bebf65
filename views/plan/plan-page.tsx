import type { Plan } from '../../src/contract/plan.ts'
import { Page } from '../page.tsx'
import { pieceWords } from '../words/contaminant.ts'
import { sizeWords } from '../words/size.ts'
import { PlanForm } from './plan-form.tsx'
import { type PlanPageProps, planQuery } from './props.ts'

/** A trial planned: which pieces, how many, where, and the chance that they show the size. */
export function PlanPage(props: PlanPageProps) {
  const { title, packed, problems, plan } = props
  return (
    <Page title={`${problems.size > 0 ? 'Error: ' : ''}Plan a trial: ${title}`} packed={packed} here="runs">
      {problems.size > 0 ? (
        <div class="summary-of-errors" role="alert" tabindex={-1}>
          <h2>There is a problem</h2>
          <ul>
            {[...problems].map(([name, message]) => (
              <li>
                <a href={`#${name}`}>{message}</a>
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      <p class="over-title">
        <a href={`/runs?b=${packed}`}>Test runs</a>
      </p>
      <h1>Plan a trial</h1>
      <p class="standfirst">
        How many pieces of which sizes, where and when, to show on the product ({title}) that a size is found
        9 times in 10; and the chance that the trial shows it if the machine is as predicted, or worse.
      </p>
      <PlanForm {...props} />
      {plan ? <Planned {...props} plan={plan} /> : null}
    </Page>
  )
}

function Planned(props: PlanPageProps & { plan: Plan }) {
  const { plan, packed, typed, names } = props
  const query = planQuery(packed, typed)
  return (
    <>
      <section aria-labelledby="planned">
        <h2 id="planned">{`${plan.label} at ${plan.point}: ${pieceWords(plan, names)}`}</h2>
        <p class="answer">{plan.words}</p>
        {plan.chosen ? (
          <ul class="acts">
            <li>
              <a href={`/plan/sheet?${query}`}>Print the record sheet</a>
            </li>
            <li>
              <a href={`/runs/enter?${query}`}>Enter it on a phone</a>
            </li>
          </ul>
        ) : null}
      </section>
      <Routes plan={plan} />
      <Places plan={plan} />
      <section aria-labelledby="how">
        <h2 id="how">How it is run</h2>
        <ol>
          {plan.steps.map((step) => (
            <li>{step}</li>
          ))}
        </ol>
      </section>
      {plan.clause ? (
        <section aria-labelledby="clause">
          <h2 id="clause">Acceptance clause</h2>
          <p>{plan.clause}</p>
          <p class="small">
            {`The clean run: a machine that rejects ${perThousand(plan.clean.hoped)} in 1,000 (assumed: three tenths of what is allowed) comes through it with chance ${percent(plan.clean.power)}.`}
          </p>
        </section>
      ) : null}
    </>
  )
}

const percent = (chance: number) => (chance > 0.995 ? 'over 99 %' : `${Math.round(chance * 100)} %`)
const perThousand = (rate: number) => Number((rate * 1000).toPrecision(2))

function Routes({ plan }: { plan: Plan }) {
  const { curve, oneSize, chosen } = plan
  return (
    <section aria-labelledby="routes">
      <h2 id="routes">Two ways to show it</h2>
      <p>
        {`Chance that the trial shows ${sizeWords(plan.sizeMm)} mm, with each piece once in a pack of its own. One size is exact; curves are 2,000 simulated trials, good to 2 in 100.`}
      </p>
      <section class="scroll" tabindex={0} aria-label="Pieces against the chance of showing it">
        <table class="routes">
          <caption>Pieces against the chance of showing it</caption>
          <thead>
            <tr>
              <th scope="col">Way</th>
              <th scope="col">Pieces</th>
              <th scope="col">As predicted</th>
              <th scope="col">Sizes 5 % larger</th>
              <th scope="col">10 % larger</th>
            </tr>
          </thead>
          <tbody>
            {oneSize.map((route) => (
              <tr class={route.pieces === chosen?.clause.pieces ? 'chosen' : ''}>
                <th scope="row">
                  {`${route.sizeMm} mm only, ${route.misses === 0 ? 'none' : `at most ${route.misses}`} missed`}
                  {route.pieces === chosen?.clause.pieces ? ' (this plan)' : ''}
                </th>
                <td class="n">{route.pieces}</td>
                <td class="n">{percent(route.power.asPredicted)}</td>
                <td class="n">{percent(route.power.fiveWorse)}</td>
                <td class="n">{percent(route.power.tenWorse)}</td>
              </tr>
            ))}
            {curve.map((route) => (
              <tr>
                <th scope="row">{`curve through ${route.sizesMm.join(', ')} mm, ${route.perSize} each`}</th>
                <td class="n">{route.pieces}</td>
                <td class="n">{percent(route.power.asPredicted)}</td>
                <td class="n">{percent(route.power.fiveWorse)}</td>
                <td class="n">{percent(route.power.tenWorse)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  )
}

function Places({ plan }: { plan: Plan }) {
  return (
    <section aria-labelledby="places">
      <h2 id="places">Places</h2>
      <ul>
        {plan.positions.map(({ name, sizeMm, counted }) => (
          <li>
            {`${name}: ${sizeMm === null ? 'nothing is expected to be found there' : `expected from ${sizeWords(sizeMm)} mm`}`}
            {counted ? <strong>; the counted pieces lie here</strong> : ''}
          </li>
        ))}
      </ul>
      {plan.lies.length > 1 ? <p>{`Each size in every lie by itself: ${plan.lies.join(', ')}.`}</p> : null}
    </section>
  )
}
