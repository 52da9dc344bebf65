import type { Advice } from '../../src/contract/advice.ts'
import { Page } from '../page.tsx'
import { inkOf } from '../register/ink.tsx'
import { CheckSection, type PackSize } from './check-section.tsx'
import { SiteList } from './site-list.tsx'

export interface ChecksPageProps {
  readonly advice: Advice
  readonly title: string
  readonly packed: string
  readonly packs: readonly PackSize[]
}

/** The check plan of a brief, machine by machine, and what to ask on site. */
export function ChecksPage({ advice, title, packed, packs }: ChecksPageProps) {
  const ink = inkOf(advice, packed, false)
  const { points, siteList } = advice.checks
  return (
    <Page title={`Check plan: ${title}`} packed={packed} here="checks">
      <h1>Check plan</h1>
      <p class="standfirst">
        {title}. With which pieces, where, how often, what is held, and what is done when a check fails. A
        draft for the people who run the line; only trials on this product show what a machine finds.
      </p>
      <ul class="acts">
        <li>
          <a href={`/register?b=${packed}`}>Hazard register</a>
        </li>
        <li>
          <a href={`/report?b=${packed}`}>Print the report</a>
        </li>
      </ul>
      {points.length === 0 ? (
        <p>
          No machine compared here finds anything asked for, so there is nothing to check. The register says
          what has to keep the hazards out.
        </p>
      ) : null}
      {points.map((check, at) => (
        <CheckSection check={check} earlier={points.slice(0, at)} pack={packs[check.pointIndex]!} ink={ink} />
      ))}
      <SiteList list={siteList} ink={ink} />
    </Page>
  )
}
