import { CheckSection } from '../checks/check-section.tsx'
import { SiteList } from '../checks/site-list.tsx'
import { AnswersAtOnce } from '../register/answers-at-once.tsx'
import { Confirm } from '../register/confirm.tsx'
import { ControlsTable } from '../register/controls-table.tsx'
import { HazardSection } from '../register/hazard-section.tsx'
import { inkOf } from '../register/ink.tsx'
import { Limits } from '../register/limits.tsx'
import { EightQuestions } from '../register/questions.tsx'
import { Overruled, Plant, Review } from '../register/review.tsx'
import { OfSeveral, oneLevel, ownSentences } from '../register/several.tsx'
import { Asked, AssumedValues } from './asked.tsx'
import { Cautions, Signatures, Sources, VersionsAtEnd } from './back-matter.tsx'
import { Changed } from './changed.tsx'
import { FirstPage } from './first-page.tsx'
import { ControlsInShort, PiecesInShort } from './in-short.tsx'
import { Predicted } from './predicted.tsx'
import type { ReportProps } from './report-page.tsx'
import { Trialed } from './trialed.tsx'

const SECTIONS = [
  ['asked', 'What was asked'],
  ['predicted', 'What the machines are predicted to find'],
  ['demonstrated', 'What trials on this product showed'],
  ['hazards', 'Hazard register'],
  ['limits', 'Limit, monitoring, verification'],
  ['checks', 'Check plan'],
  ['site-list', 'To ask and to see on site'],
  ['revalidate', 'What asks for validation anew'],
  ['law', 'Law, guidance and standards of the market'],
  ['auditor', 'Ten questions an auditor asks'],
  ['assumed', 'Assumptions'],
  ['changed', 'What changed'],
  ['cautions', 'Cautions'],
  ['sources', 'Sources'],
  ['signatures', 'Versions and signatures'],
] as const

/** The report for paper, whole or in two pages: everything stands open, figures carry ranges and source numbers. */
export function ReportBody(props: ReportProps) {
  const { advice, brief, packed, names, short, changes, trial } = props
  const ink = inkOf(advice, packed, true)
  const { register, checks } = advice
  const unitOf = (line: string) => register.lines.find(({ name }) => name === line)?.unit ?? 'packs'
  if (short)
    return (
      <div class="report short">
        <FirstPage {...props} ink={ink} />
        <ControlsInShort register={register} ink={ink} />
        <PiecesInShort checks={checks} ink={ink} />
        <Cautions advice={advice} ink={ink} short />
        <Signatures />
        <VersionsAtEnd {...props} />
      </div>
    )
  return (
    <div class="report">
      <FirstPage {...props} ink={ink} />
      <nav class="report-contents" aria-label="Contents">
        <h2>Contents</h2>
        <ol>
          {SECTIONS.map(([id, words]) => (
            <li>
              <a href={`#${id}`}>{words}</a>
            </li>
          ))}
        </ol>
      </nav>
      <Asked brief={brief} advice={advice} names={names} />
      <Predicted advice={advice} names={names} ink={ink} />
      <Trialed advice={advice} brief={brief} names={names} trial={trial} />
      <section aria-labelledby="hazards">
        <h2 id="hazards">Hazard register</h2>
        <EightQuestions register={register} ink={ink} />
        <OfSeveral register={register} ink={ink} />
        {register.hazards.map((hazard) => (
          <HazardSection
            hazard={hazard}
            says={ownSentences(register, hazard.says)}
            unit={unitOf(hazard.line)}
            ink={ink}
            levelSaid={oneLevel(register)}
          />
        ))}
        {register.lines.map(({ name }) => (
          <ControlsTable hazards={register.hazards.filter(({ line }) => line === name)} ink={ink} />
        ))}
        <AnswersAtOnce register={register} ink={ink} />
      </section>
      <Limits register={register} ink={ink} />
      <section aria-labelledby="checks" class="report-checks">
        <h2 id="checks">Check plan</h2>
        {checks.points.length === 0 ? <p>No machine compared here finds anything asked for.</p> : null}
        {checks.points.map((check, at) => (
          <CheckSection
            check={check}
            earlier={checks.points.slice(0, at)}
            pack={brief.points[check.pointIndex]!}
            ink={ink}
          />
        ))}
      </section>
      <SiteList list={checks.siteList} ink={ink} />
      <Review register={register} ink={ink} />
      <AssumedValues advice={advice} />
      <Confirm register={register} ink={ink} />
      <Changed changes={changes} register={register} />
      <Overruled register={register} ink={ink} />
      <Cautions advice={advice} ink={ink} />
      <Sources advice={advice} />
      <section aria-labelledby="signatures" class="at-once">
        <h2 id="signatures">Versions and signatures</h2>
        <Plant register={register} ink={ink} />
        <Signatures />
        <VersionsAtEnd {...props} />
      </section>
    </div>
  )
}
