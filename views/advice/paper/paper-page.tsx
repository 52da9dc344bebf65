import { Page } from '../../page.tsx'
import { pathWords } from '../../words/path.ts'
import { Assumptions } from '../assumptions.tsx'
import { Quotes } from '../first/quotes.tsx'
import { RatherLinks } from '../first/rather-links.tsx'
import { linksTo } from '../links.ts'
import { CloseCalls } from '../parts/close-calls.tsx'
import { Enters } from '../parts/enters.tsx'
import { Prevent } from '../parts/prevent.tsx'
import { Cautions } from '../reasons/cautions.tsx'
import { Changes } from '../reasons/changes.tsx'
import { citationsOf } from '../reasons/citations.ts'
import { CitedSources } from '../reasons/cited.tsx'
import { MissingSection } from '../reasons/missing-inputs.tsx'
import { AnswerTable } from '../sheet/answer-table.tsx'
import { Machines } from '../sheet/machines.tsx'
import { Upstream } from '../sheet/upstream.tsx'
import { Ladders } from '../sizes/ladders.tsx'
import { type DoseLaw, TubeAndDose } from '../sizes/tube-and-dose.tsx'
import { Versions } from '../versions.tsx'
import type { PaperProps } from './boss-page.tsx'
import { PaperReasons, WhyNot } from './paper-reasons.tsx'

interface Props extends PaperProps {
  /** Two to four pages without reasons and assumptions. */
  readonly short: boolean
  readonly doseLaw: DoseLaw
}

/** The advice on paper, in short or with every sentence, its decisive condition and its sources. */
export function PaperPage({ advice, title, names, packed, pointLines, printedOn, short, doseLaw }: Props) {
  const links = linksTo(packed, advice)
  const citations = citationsOf(advice)
  const { ask, test } = advice.answer
  return (
    <Page title={`${title}, ${printedOn}${short ? ', in short' : ''}`} packed={packed} here="advice" print>
      <p class="over-title">
        Advice{short ? ', in short' : ''} · {printedOn}
      </p>
      <h1>{title}</h1>
      <p class="answer">{advice.answer.sentence}</p>
      <AnswerTable advice={advice} names={names} links={links} />
      <section aria-labelledby="before-ordering">
        <h2 id="before-ordering">Before ordering</h2>
        <ul>
          {[...ask, ...test].map(({ text }) => (
            <li>{text}</li>
          ))}
        </ul>
      </section>
      <Machines advice={advice} names={names} links={links} pointLines={pointLines} print />
      {short ? null : <Ladders advice={advice} names={names} links={links} />}
      <Upstream advice={advice} names={names} links={links} print />
      <Changes advice={advice} names={names} />
      <Prevent advice={advice} names={names} citations={citations} />
      <Quotes advice={advice} names={names} />
      {short ? null : (
        <>
          <CloseCalls advice={advice} />
          <RatherLinks advice={advice} links={links} />
          <Enters advice={advice} />
          <MissingSection
            missing={advice.missing}
            wordsOf={(path) => pathWords(path, advice)}
            hrefOf={() => null}
          />
          <WhyNot advice={advice} />
          <PaperReasons advice={advice} citations={citations} packed={packed} />
          <TubeAndDose advice={advice} links={links} law={doseLaw} print />
          <Assumptions advice={advice} links={links} />
        </>
      )}
      <Cautions advice={advice} citations={citations} packed={packed} />
      <CitedSources
        citations={citations}
        {...(short ? { of: advice.cautions.flatMap(({ sources }) => sources) } : {})}
      />
      <Versions advice={advice} packed={packed} printedOn={printedOn} />
    </Page>
  )
}
