import type { Advice } from '../../src/contract/advice.ts'
import { Page } from '../page.tsx'
import type { Names } from '../words/contaminant.ts'
import { pathWords } from '../words/path.ts'
import { Assumptions } from './assumptions.tsx'
import { CloseCalls } from './first/close-calls.tsx'
import { Combination } from './first/combination.tsx'
import { Comparison } from './first/comparison.tsx'
import { HonestNo } from './first/honest-no.tsx'
import { Quotes } from './first/quotes.tsx'
import { RatherLinks } from './first/rather-links.tsx'
import { Removals } from './first/removals.tsx'
import { linksTo } from './links.ts'
import { Cautions } from './reasons/cautions.tsx'
import { Changes } from './reasons/changes.tsx'
import { citationsOf } from './reasons/citations.ts'
import { CitedSources } from './reasons/cited.tsx'
import { MissingSection } from './reasons/missing-inputs.tsx'
import { Reasons } from './reasons/reasons.tsx'
import { Ladders } from './sizes/ladders.tsx'
import { type DoseLaw, TubeAndDose } from './sizes/tube-and-dose.tsx'
import { Versions } from './versions.tsx'

export interface AdvicePageProps {
  readonly advice: Advice
  readonly title: string
  readonly names: Names
  readonly packed: string
  readonly pointLines: readonly string[]
  /** Day of printing for the version for paper, with everything open; null on the screen. */
  readonly printedOn: string | null
  /** For paper without reasons and details: what a buyer takes into a meeting. */
  readonly short?: boolean
  /** Where each change of the advice leads, in their order. */
  readonly changeLinks?: readonly string[]
  /** What the market allows; the line on dose is left out without it. */
  readonly doseLaw?: DoseLaw
}

/** The answer first, then what cannot be done, then the picture, the table, the reasons. */
export function AdvicePage(props: AdvicePageProps) {
  const { advice, title, names, packed, pointLines, printedOn, doseLaw, short = false } = props
  const print = printedOn !== null
  const links = linksTo(packed, advice)
  const citations = citationsOf(advice)
  return (
    <Page title={`Advice: ${title}`} packed={packed} here="advice" print={print}>
      <p class="over-title">Advice{short ? ', in short' : ''}</p>
      <h1>{title}</h1>
      <p class="answer">{advice.summary}</p>
      {print ? null : <Acts packed={packed} />}
      <HonestNo advice={advice} names={names} citations={citations} />
      <Combination advice={advice} names={names} citations={citations} />
      <CloseCalls advice={advice} links={links} />
      <div class={short ? 'short-form' : ''}>
        <Ladders advice={advice} names={names} links={links} print={print && !short} />
        <Comparison advice={advice} names={names} links={links} pointLines={pointLines} />
        {doseLaw ? <TubeAndDose advice={advice} links={links} law={doseLaw} print={print && !short} /> : null}
      </div>
      {short ? null : (
        <>
          <Removals advice={advice} names={names} links={links} citations={citations} print={print} />
          <Reasons advice={advice} names={names} links={links} citations={citations} print={print} />
          <RatherLinks advice={advice} links={links} />
        </>
      )}
      <Changes advice={advice} names={names} hrefs={print ? [] : (props.changeLinks ?? [])} />
      <MissingSection
        missing={advice.missing}
        wordsOf={(path) => pathWords(path, advice)}
        hrefOf={(path) => `/brief?b=${packed}#${path}`}
      />
      <Quotes advice={advice} names={names} />
      {short ? null : <Assumptions advice={advice} links={links} />}
      <Cautions advice={advice} citations={citations} packed={packed} />
      {short ? <ShortOf packed={packed} /> : <CitedSources citations={citations} />}
      <Versions advice={advice} packed={packed} printedOn={printedOn} />
    </Page>
  )
}

/** What the short form leaves out, and where it stands. */
function ShortOf({ packed }: { packed: string }) {
  return (
    <p class="small">
      Reasons, calculations, assumptions and the sources numbered above stand in the{' '}
      <a href={`/advice?b=${packed}&print=1`}>whole advice</a>, at the address below.
    </p>
  )
}

function Acts({ packed }: { packed: string }) {
  return (
    <ul class="acts">
      <li>
        <a href={`/brief?b=${packed}`}>Change the brief</a>
      </li>
      <li>
        <a href={`/advice?b=${packed}&print=short`}>For paper, in short</a>
      </li>
      <li>
        <a href={`/advice?b=${packed}&print=1`}>For paper, everything open</a>
      </li>
      <li>
        <a href={`/fragment?b=${packed}`}>Would we have found this?</a>
      </li>
      <li>
        <a href={`/brief.json?b=${packed}`} download>
          Brief as a file
        </a>
      </li>
    </ul>
  )
}
