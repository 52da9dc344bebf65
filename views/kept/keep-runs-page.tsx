import type { KeptThing } from '../../src/store/kept.ts'
import { Page } from '../page.tsx'
import { HiddenFields } from './hidden-fields.tsx'
import { moment } from './kept-page.tsx'

export interface KeepRunsPageProps {
  readonly title: string
  readonly token: string
  readonly fields: Readonly<Record<string, string>>
  /** Test runs that are kept already. */
  readonly others: readonly KeptThing[]
}

/** Test runs on their way to be kept: as new ones, or as the next revision of others. */
export function KeepRunsPage({ title, token, fields, others }: KeepRunsPageProps) {
  return (
    <Page title="Keep test runs" packed={fields.b ?? null} here="kept">
      <h1>Keep test runs</h1>
      <p class="standfirst">{title}. The table is kept as it was typed, with the brief it was run for.</p>
      <form method="post" action="/kept">
        <input type="hidden" name="token" value={token} />
        <HiddenFields fields={fields} />
        {others.length === 0 ? null : (
          <div class="field wide">
            <label for="onto">Keep them as</label>
            <select id="onto" name="onto">
              <option value="">new test runs</option>
              {others.map(({ id, title: other, revision, changedAt }) => (
                <option value={`${id}:${revision}`}>
                  the next revision of {other} ({moment(changedAt)})
                </option>
              ))}
            </select>
          </div>
        )}
        <button type="submit">Keep the test runs</button>
      </form>
    </Page>
  )
}
