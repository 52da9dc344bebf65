import type { Changed } from '../../src/store/difference.ts'
import type { Revision } from '../../src/store/kept.ts'
import { Page } from '../page.tsx'
import { ChangedList } from './changed-list.tsx'
import { HiddenFields } from './hidden-fields.tsx'
import { moment } from './kept-page.tsx'

export interface ConflictPageProps {
  readonly id: string
  readonly token: string
  /** Packed, for a link; null where it is no brief. */
  readonly mine: string | null
  /** What is asked once more, after what was kept meanwhile. */
  readonly again: {
    readonly action: string
    readonly fields: Readonly<Record<string, string>>
    readonly words: string
  }
  readonly theirs: Omit<Revision, 'body'> & { readonly packed: string | null }
  /** From theirs to mine. */
  readonly changed: readonly Changed[]
}

/** Somebody else was first: both versions, and the choice. */
export function ConflictPage({ id, token, mine, again, theirs, changed }: ConflictPageProps) {
  return (
    <Page title="Changed meanwhile" packed={mine} here="kept">
      <h1>Changed meanwhile</h1>
      <p class="standfirst">
        Nothing was written. Since you began, revision {theirs.revision} was kept
        {theirs.by ? ` by ${theirs.by}` : ''} at {moment(theirs.at)} UTC.
      </p>
      {mine ? (
        <p>
          <a href={`/advice?b=${mine}`}>Your version</a>
          {theirs.packed ? (
            <>
              {' · '}
              <a href={`/advice?b=${theirs.packed}`}>the version kept meanwhile</a>
            </>
          ) : null}
        </p>
      ) : null}
      <h2>From theirs to yours</h2>
      <ChangedList changed={changed} />
      <form method="post" action={again.action}>
        <HiddenFields fields={again.fields} />
        <input type="hidden" name="token" value={token} />
        <input type="hidden" name="revision" value={String(theirs.revision)} />
        <button type="submit">{again.words}</button>
      </form>
      <p>
        <a href={`/kept/${id}`}>Leave it as it is</a>
      </p>
    </Page>
  )
}
