import { Page } from '../../page.tsx'
import { briefRows, pointLine } from '../../words/brief.ts'
import { askedWords } from '../../words/path.ts'
import { Assumptions } from '../assumptions.tsx'
import { Quotes } from '../first/quotes.tsx'
import { RatherLinks } from '../first/rather-links.tsx'
import { linksTo } from '../links.ts'
import { CloseCalls } from '../parts/close-calls.tsx'
import { Enters } from '../parts/enters.tsx'
import { Prevent } from '../parts/prevent.tsx'
import { Cautions, cautionsOf, Law, LawInShort, lawOf } from '../reasons/cautions.tsx'
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
import { assumedLine } from './assumed-line.ts'
import type { PaperProps } from './boss-page.tsx'
import { PaperReasons, WhyNot } from './paper-reasons.tsx'

interface Props extends PaperProps {
  /** Two to four pages without reasons. */
  readonly short: boolean
  readonly doseLaw: DoseLaw
}

/** The advice on paper, in short or with every sentence, its decisive condition and its sources. */
export function PaperPage({ advice, brief, title, names, packed, printedOn, short, doseLaw }: Props) {
  const links = linksTo(packed, advice)
  const citations = citationsOf(advice)
  const { ask, test } = advice.answer
  const shown = { advice, citations, packed }
  return (
    <Page title={`${title}, ${printedOn}${short ? ', in short' : ''}`} packed={packed} here="advice" print>
      <div class="paper">
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
        <section aria-labelledby="the-brief">
          <h2 id="the-brief">The brief</h2>
          <dl class="brief-words">
            {briefRows(brief, names).map(([what, said]) => (
              <div>
                <dt>{what}</dt>
                <dd>{said}</dd>
              </div>
            ))}
          </dl>
          {short ? <p class="small">{assumedLine(advice)}</p> : null}
        </section>
        <Machines
          advice={advice}
          names={names}
          links={links}
          pointLines={brief.points.map(pointLine)}
          print
        />
        {short ? null : <Ladders advice={advice} names={names} links={links} print />}
        <Upstream advice={advice} names={names} links={links} print />
        <Changes advice={advice} names={names} />
        <Prevent advice={advice} names={names} citations={citations} />
        <Quotes advice={advice} names={names} packed={null} />
        {short ? null : (
          <>
            <CloseCalls advice={advice} />
            <RatherLinks advice={advice} links={links} />
            <Enters advice={advice} />
            <MissingSection
              missing={advice.missing}
              wordsOf={(path) => askedWords(path, advice)}
              hrefOf={() => null}
              packed={null}
            />
            <WhyNot advice={advice} />
            <PaperReasons {...shown} />
            <TubeAndDose advice={advice} links={links} law={doseLaw} print />
            <Assumptions advice={advice} links={links} />
          </>
        )}
        <Cautions {...shown} />
        {short ? <LawInShort {...shown} /> : <Law {...shown} />}
        <CitedSources
          citations={citations}
          {...(short
            ? {
                of: [
                  ...[...cautionsOf(advice), ...lawOf(advice)].flatMap(({ sources }) => sources),
                  ...advice.prevention.flatMap(({ sources }) => sources),
                ],
              }
            : {})}
        />
        <Versions advice={advice} packed={packed} printedOn={printedOn} />
      </div>
    </Page>
  )
}
