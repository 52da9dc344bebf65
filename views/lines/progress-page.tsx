import { Page } from '../page.tsx'
import type { ProgressProps } from './props.ts'

/** How far a table is; the page asks again by itself, with script or without. */
export function ProgressPage({ packed, id, done, rows }: ProgressProps) {
  return (
    <Page title={`${done} of ${rows} products`} packed={packed} here="lines" again={2}>
      <h1>Lines</h1>
      <p>
        <label for="progress">
          {done} of {rows} products worked out
        </label>
      </p>
      <progress id="progress" max={rows} value={done}>
        {Math.floor((100 * done) / rows)} %
      </progress>
      <p>
        <a href={`/lines/${id}`}>Look again</a>
      </p>
    </Page>
  )
}
