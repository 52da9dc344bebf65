import { raw } from 'hono/html'
import type { Child } from 'hono/jsx'
import type { Advice } from '../../src/contract/advice.ts'
import type { Brief } from '../../src/contract/brief.ts'
import type { ReportTrial } from '../../src/report/trial-in-report.ts'
import { Page } from '../page.tsx'
import type { Names } from '../words/contaminant.ts'
import { ReportBody } from './report-body.tsx'

/** What a report is made of; the same values make the same bytes. */
export interface ReportProps {
  readonly advice: Advice
  readonly brief: Brief
  readonly packed: string
  readonly names: Names
  /** Day of the report, in words. */
  readonly date: string
  readonly short: boolean
  /** A trial given with the report; what the brief keeps of earlier ones is in the brief. */
  readonly trial: ReportTrial | null
  /** What changed since an earlier issue, in words; null where none was compared. */
  readonly changes: readonly string[] | null
}

/** The report as a page of the program, with the ways to keep it. */
export function ReportPage(props: ReportProps) {
  const { packed, short, brief } = props
  const other = short ? `/report?b=${packed}` : `/report?b=${packed}&short=1`
  return (
    <Page title={`Report: ${brief.title}`} packed={packed} here="report" print>
      <ul class="acts">
        <li>
          <a href={`/register?b=${packed}`}>Back to the register</a>
        </li>
        <li>
          <a href={other}>{short ? 'The whole report' : 'Short form, two pages'}</a>
        </li>
        <li>
          <a href={`/report/file?b=${packed}${short ? '&short=1' : ''}`} download>
            Keep it as one file
          </a>
        </li>
        <li>
          <a href={`/report/data.json?b=${packed}${short ? '&short=1' : ''}`} download>
            Keep what makes it again (JSON)
          </a>
        </li>
      </ul>
      <ReportBody {...props} />
    </Page>
  )
}

/** The report as one file that loads nothing: for an archive or a mail. */
export function ReportDocument({ css, ...props }: ReportProps & { css: string }) {
  return (
    <Bare title={`Report: ${props.brief.title}`} css={css}>
      <ReportBody {...props} />
    </Bare>
  )
}

function Bare({ title, css, children }: { title: string; css: string; children: Child }) {
  return (
    <>
      {raw('<!doctype html>')}
      <html lang="en">
        <head>
          <meta charset="utf-8" />
          <meta name="viewport" content="width=device-width, initial-scale=1" />
          <title>{title}</title>
          <style>{raw(css)}</style>
        </head>
        <body class="for-paper">
          <main>{children}</main>
        </body>
      </html>
    </>
  )
}
