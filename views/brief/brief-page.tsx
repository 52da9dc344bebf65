import type { Advice } from '../../src/contract/advice.ts'
import type { Problem } from '../../src/contract/brief.ts'
import type { Missing } from '../../src/contract/reasoning.ts'
import { Page } from '../page.tsx'
import { askedWords } from '../words/path.ts'
import { Carry } from './carry.tsx'
import { ContaminantGroup } from './contaminant-group.tsx'
import { type DemoLink, DemoList } from './demo-list.tsx'
import { EquipmentGroup } from './equipment-group.tsx'
import { ErrorSummary } from './error-summary.tsx'
import { Line } from './field.tsx'
import { FlowGroup } from './flow-group.tsx'
import { Headline } from './headline.tsx'
import { MarketGroup } from './market-group.tsx'
import { PointGroup } from './point-group.tsx'
import { ProductGroup } from './product-group.tsx'
import { QuoteGroup } from './quote-group.tsx'
import { RecordGroup } from './record-group.tsx'
import type { Sheet } from './sheet.ts'

export interface BriefPageProps {
  readonly sheet: Sheet
  /** What is wrong, in the order of the form; empty when nothing is, or nothing was asked yet. */
  readonly problems: readonly Problem[]
  readonly packed: string | null
  readonly demos: readonly DemoLink[]
  readonly headline: Advice | null
  /** What is still missing for an answer, in words; empty once there is one. */
  readonly needed: readonly string[]
  /** What to enter next, each with the address of its field; null before there is an answer. */
  readonly next: readonly (Missing & { readonly href: string })[] | null
  readonly imported?: { readonly typed: string; readonly wrong: string }
}

/** The brief: one sheet in groups, the answer and what is still missing beside it. */
export function BriefPage(props: BriefPageProps) {
  const { sheet, problems, packed, demos, headline, next, needed, imported } = props
  const fresh = Object.values(sheet.answers).every((value) => value === '' || value === 'row')
  return (
    <Page title={`${problems.length > 0 ? 'Error: ' : ''}Brief`} packed={packed} here="brief">
      {problems.length > 0 ? <ErrorSummary problems={problems} /> : null}
      <h1>Brief</h1>
      {fresh ? (
        <>
          <p class="standfirst">
            Describe the food, where it can be inspected and what must not be in it. Food, thickness and speed
            give a first answer.
          </p>
          <details class="start" open>
            <summary>Start from an example</summary>
            <DemoList demos={demos} />
          </details>
        </>
      ) : null}
      <div class="sheet-and-answer">
        <form id="brief" class="sheet compact" method="post" action="/advice" novalidate>
          <div class="sheet-head">
            <Line sheet={sheet} path="title" />
            <button type="submit" name="action" value="advise">
              Get the advice
            </button>
          </div>
          <ProductGroup sheet={sheet} />
          <PointGroup sheet={sheet} />
          <ContaminantGroup sheet={sheet} />
          <MarketGroup sheet={sheet} />
          <FlowGroup sheet={sheet} />
          <EquipmentGroup sheet={sheet} />
          <QuoteGroup sheet={sheet} />
          <RecordGroup sheet={sheet} />
          <Carry
            sheet={sheet}
            packed={packed}
            typed={imported?.typed ?? ''}
            wrong={imported?.wrong ?? null}
          />
        </form>
        <aside class="answer-so-far" aria-labelledby="so-far">
          <h2 id="so-far">The answer so far</h2>
          <div
            id="headline"
            role="status"
            hx-post="/advice/headline"
            hx-include="#brief"
            hx-trigger="input delay:700ms from:#brief"
            hx-sync="this:replace"
            hx-swap="innerHTML"
          >
            <Headline advice={headline} needed={needed} />
          </div>
          <p class="send">
            <button type="submit" form="brief" name="action" value="advise">
              Get the advice
            </button>{' '}
            <button type="submit" form="brief" class="quiet" name="action" value="check">
              Show what is assumed
            </button>
          </p>
          {headline && next && next.length > 0 ? <Next advice={headline} next={next} /> : null}
        </aside>
      </div>
    </Page>
  )
}

const MOST_NEXT = 3

/** What is not given and would change the answer most, each leading to its field. */
function Next({ advice, next }: { advice: Advice; next: NonNullable<BriefPageProps['next']> }) {
  return (
    <>
      <h3>Would sharpen the answer</h3>
      <ol class="missing">
        {next.slice(0, MOST_NEXT).map(({ path, href, effect }) => (
          <li>
            <a href={href}>{askedWords(path, advice)}</a>: {effect}
          </li>
        ))}
      </ol>
    </>
  )
}
